import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createKernel } from '../../src/solid/kernel.js';
import { randomFamily } from '../parts/nut/random-family.js';
import { soundOrRefused } from '../support/sound-or-refused.js';

it('finds no member of the nut family that is unsound and not refused', async () => {
  const kernel = await createKernel();
  const counts = { refused: 0, failed: 0, made: 0 };
  await fc.assert(
    fc.asyncProperty(randomFamily, async (sheet) => {
      counts[await soundOrRefused(sheet, kernel)]++;
    }),
    { numRuns: 100 },
  );
  expect(counts.made).toBeGreaterThan(20);
});
