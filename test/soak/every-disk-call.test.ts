import { expect, it } from 'vitest';
import { kills, strikeCalls } from '../support/every-call.js';
import { WRITERS } from '../support/written-folders.js';

it.each(WRITERS.map((writer) => [writer.name, writer] as const))(
  '%s: killed, or failed by ENOSPC, EIO, EACCES, at each disk call in turn',
  async (_, writer) => {
    const { calls, faults } = await strikeCalls(writer, kills);
    console.log(`${writer.name}: ${calls} disk calls`);
    expect(faults).toEqual([]);
    for (const code of ['ENOSPC', 'EIO', 'EACCES'])
      expect((await strikeCalls(writer, () => ({ code }))).faults, code).toEqual([]);
  },
);
