import { describe, expect, it } from 'vitest';
import { kills, strikeCalls } from '../../support/every-call.js';
import { WRITERS } from '../../support/written-folders.js';

const CODES = ['ENOSPC', 'EIO', 'EACCES'] as const;

// some calls of each; all of them with every error are a matter of the soak tests
describe.each(WRITERS.map((writer) => [writer.name, writer] as const))('%s', (_, writer) => {
  const step = writer.isLong === true ? 17 : 4;

  it('killed at a disk call leaves the old or the new, and the next run is whole', async () => {
    const { calls, faults } = await strikeCalls(writer, kills, { step });
    expect(calls).toBeGreaterThan(10);
    expect(faults).toEqual([]);
  }, 60_000);

  it('an error of the disk leaves the old, or does no harm', async () => {
    const fails = (_call: string, at: number) => ({ code: CODES[at % CODES.length]! });
    expect((await strikeCalls(writer, fails, { first: 2, step })).faults).toEqual([]);
  }, 60_000);
});
