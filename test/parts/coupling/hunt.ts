import fc from 'fast-check';
import type { Kernel } from '../../../src/solid/kernel.js';
import { soundOrRefused } from '../../support/sound-or-refused.js';
import { randomCoupling } from './random-couplings.js';

/** Makes random couplings and counts what became of them. */
export async function huntCouplings(kernel: Kernel, numRuns: number, seed?: number) {
  const counts = { refused: 0, failed: 0, made: 0 };
  await fc.assert(
    fc.asyncProperty(randomCoupling, async (sheet) => {
      counts[await soundOrRefused(sheet, kernel)]++;
    }),
    { numRuns, ...(seed === undefined ? {} : { seed }) },
  );
  return counts;
}
