import fc from 'fast-check';
import { expect, it } from 'vitest';

import { createKernel } from '../../src/solid/kernel.js';
import { randomAdapter } from '../parts/adapter/random-adapters.js';
import { worstClocking } from '../support/brute-clocking.js';
import { soundOrRefused } from '../support/sound-or-refused.js';

it('finds no adapter that is unsound and not refused', async () => {
  const kernel = await createKernel();
  const counts = { refused: 0, failed: 0, made: 0 };
  await fc.assert(
    fc.asyncProperty(randomAdapter, async (sheet) => {
      counts[await soundOrRefused(sheet, kernel)]++;
    }),
    { numRuns: 400 },
  );
  expect(counts.made).toBeGreaterThan(40);
});

it('clocks a thousand pairs of patterns never more than 0.01 mm worse than brute force', () => {
  expect(worstClocking(1000)).toBeLessThan(0.01);
});
