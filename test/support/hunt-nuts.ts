import fc from 'fast-check';
import { expect } from 'vitest';
import { InputError, type Kernel, makePart } from '../../src/index.js';
import { randomNut } from './random-nuts.js';

/** Solid checks that a nut cannot fail for any sound sheet. */
const SOLID = ['solid-closed', 'solid-volume', 'solid-bounds', 'solid-mate'];

/** Makes random nuts; most of them must get as far as a file, or the hunt would prove nothing. */
export async function huntNuts(kernel: Kernel, runs: number): Promise<void> {
  let made = 0;
  await fc.assert(
    fc.asyncProperty(randomNut, async (sheet) => {
      const first = await attempt(sheet, kernel);
      if (!first) return;
      const solid = first.report.checks.filter(({ id }) => SOLID.includes(id));
      expect(solid.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
      if (first.files.length === 0) return;
      made++;
      expect(solid.map(({ id }) => id)).toEqual(SOLID);
      if (made % 5 === 0) expect((await attempt(sheet, kernel))?.files[0]?.bytes).toEqual(first.files[0]!.bytes);
    }),
    { numRuns: runs, seed: 20, endOnFailure: true },
  );
  expect(made).toBeGreaterThan(runs / 3);
}

/** Undefined for a sheet that cannot be a nut at all. */
async function attempt(sheet: object, kernel: Kernel) {
  try {
    return await makePart(sheet, { kernel });
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
