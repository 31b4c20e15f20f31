import fc from 'fast-check';
import { expect } from 'vitest';
import { checkAny, designAny, isAxis } from '../../src/axis/any.js';
import { makeAxis } from '../../src/axis/make.js';
import { makeDesign } from '../../src/pipeline/make.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { InputError } from '../../src/units/faults.js';

/** What became of the sheets of a hunt. */
export interface GateCounts {
  /** made, as `check` promised */
  made: number;
  /** stopped by a check of the fit */
  failed: number;
  /** refused as sheets */
  refused: number;
}

/**
 * Holds `make` to what `check` promises: a sheet that passes its checks is made, and no sheet comes upon a fault of ours.
 *
 * @param sheets how sheets are drawn
 * @param kernel the boolean kernel
 * @param hunt   how many, and from which seed: the same sheets each time
 * @returns what became of them, printed too
 */
export async function holdGate(
  sheets: fc.Arbitrary<object>,
  kernel: Kernel,
  hunt: { readonly numRuns: number; readonly seed: number },
): Promise<GateCounts> {
  const counts: GateCounts = { made: 0, failed: 0, refused: 0 };
  const broken: string[] = [];
  for (const sheet of fc.sample(sheets, hunt)) {
    try {
      counts[await outcome(sheet, kernel)]++;
    } catch (error) {
      broken.push(`${error instanceof Error ? error.message : String(error)}: ${JSON.stringify(sheet)}`);
    }
  }
  console.info(`${hunt.numRuns} sheets: ${counts.made} made, ${counts.failed} failed, ${counts.refused} refused`);
  expect(broken).toEqual([]);
  return counts;
}

async function outcome(sheet: object, kernel: Kernel): Promise<keyof GateCounts> {
  try {
    const designed = designAny(sheet);
    if (checkAny(designed).verdict === 'fail') return 'failed';
    const { report, files } = await (isAxis(designed)
      ? makeAxis(designed, { kernel })
      : makeDesign(designed, { kernel }));
    if (report.verdict === 'fail' || files.length === 0) throw new Error('checked, and not made');
    return 'made';
  } catch (error) {
    if (error instanceof InputError) return 'refused';
    throw error;
  }
}
