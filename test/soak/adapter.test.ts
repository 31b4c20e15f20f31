import fc from 'fast-check';
import { expect, it } from 'vitest';

import { createKernel } from '../../src/solid/kernel.js';
import { randomAdapter } from '../parts/adapter/random-adapters.js';
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
