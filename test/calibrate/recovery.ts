import type { Parameter } from '../../src/calibrate/print-model.js';
import { couponHead } from '../../src/parts/coupon/head.js';
import { isCoupon } from '../../src/parts/coupon/index.js';
import { calibrateRuns } from '../../src/pipeline/calibrate.js';
import { design } from '../../src/pipeline/design.js';
import { chance, type Nature, randomNature, readCoupon } from '../support/simulated-printer.js';

/** The usual coupon, as printed and read by the tests. */
export function usualCoupon(changes: Record<string, unknown> = {}) {
  const made = design({
    part: 'coupon',
    name: 'usual',
    screw: 'Tr8x2',
    material: 'pa12',
    printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' },
    ...changes,
  });
  if (!isCoupon(made)) throw new Error('not a coupon');
  return { made, head: couponHead(made), features: made.features };
}

/** What was put into a printer, by the names that a calibration uses. */
export function truthOf(n: Nature): Readonly<Record<Parameter, number>> {
  return {
    plane: (n.shrinkX + n.shrinkY) / 2,
    skew: (n.shrinkX - n.shrinkY) / 2,
    axial: n.shrinkZ,
    height_error: n.nozzleGap,
    wall: 2 * n.wall,
    first_layer: n.squash,
    hole_at_zero: n.hole[0],
    hole_per_mm: n.hole[1],
    post_at_zero: n.post[0],
    post_per_mm: n.post[1],
  };
}

/** How often the truth lay within two standard errors, by figure. */
export interface Coverage {
  readonly printers: number;
  /** share by figure, 0 to 1 */
  readonly within: Readonly<Record<string, number>>;
  readonly all: number;
  /** mean size of two standard errors, by figure */
  readonly half: Readonly<Record<string, number>>;
  /** printers of which a sound feature was called an outlier */
  readonly falseAlarms: number;
}

/** Calibrates that many random printers by one coupon each; `common` puts half of each variance into the zero of the calipers. */
export function coverage(printers: number, more: Partial<Nature> = {}, times = 3, common = false): Coverage {
  const { head, features } = usualCoupon();
  const hits = new Map<string, number>();
  const halves = new Map<string, number>();
  let falseAlarms = 0;
  for (let seed = 1; seed <= printers; seed++) {
    const nature = { ...randomNature(seed), ...more };
    const zero = common ? chance(seed + 104729).normal() * nature.reading * Math.SQRT1_2 : 0;
    const { calibration } = calibrateRuns([readCoupon(head, features, nature, { seed: seed + 7919, times, zero })]);
    if (calibration.outliers.length > 0) falseAlarms += 1;
    for (const [name, truth] of Object.entries(truthOf(nature))) {
      const estimate = Object.entries(calibration.solution.estimates).find(([key]) => key === name)?.[1];
      if (!estimate) throw new Error(`${name} was not estimated`);
      const isWithin = Math.abs(estimate.value - truth) <= 2 * estimate.standardError;
      hits.set(name, (hits.get(name) ?? 0) + (isWithin ? 1 : 0));
      halves.set(name, (halves.get(name) ?? 0) + 2 * estimate.standardError);
    }
  }
  const share = (map: Map<string, number>) => Object.fromEntries([...map].map(([name, sum]) => [name, sum / printers]));
  const within = share(hits);
  const all = Object.values(within).reduce((sum, one) => sum + one, 0) / hits.size;
  return { printers, within, all, half: share(halves), falseAlarms };
}
