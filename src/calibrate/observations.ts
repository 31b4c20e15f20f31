import { type Fault, InputError } from '../units/faults.js';
import { plain } from '../units/format.js';
import type { Observation, Outlier } from './fit-print.js';
import { meanReading } from './mean-reading.js';
import { type Results, readOf } from './results.js';

/** Half-width of a reading where the results do not say it. */
export const DEFAULT_CALIPERS = 0.03;

/** The means of all readings of a coupon. */
export interface Observed {
  readonly observations: readonly Observation[];
  /** single readings that were left out, and features whose readings do not agree */
  readonly outliers: readonly Outlier[];
  /** features that were read more than once */
  readonly repeated: number;
  /** of those, the ones whose readings part into groups */
  readonly parted: number;
}

/**
 * Takes the readings of a coupon together, feature by feature.
 * @throws InputError every reading that cannot be of its feature: a slip of the digits, or inches
 */
export function observe({ readings = {}, calipers = DEFAULT_CALIPERS }: Results): Observed {
  const rows = Object.entries(readings).map(([mark, row]) => ({ mark, ...readOf(row) }));
  const faults = rows.flatMap(({ mark, modelled, read }) =>
    read.flatMap((value, i) => slipOf(mark, i, value, modelled)),
  );
  if (faults.length > 0) throw new InputError(faults);
  const outliers: Outlier[] = [];
  const observations: Observation[] = [];
  let parted = 0;
  for (const { mark, kind, modelled, read } of rows.filter((row) => row.read.length > 0)) {
    const { mean, sigma, left, disagree } = meanReading(read, calipers / 2);
    for (const { value, why } of left) {
      const far = value - mean;
      outliers.push({
        mark,
        residual: far,
        standardised: far / (calipers / 2),
        why: `${plain(value, 2)} mm is ${why}`,
      });
    }
    if (disagree) {
      parted += 1;
      const why = `its readings ${read.map((one) => plain(one, 2)).join(', ')} do not agree; read it once more`;
      outliers.push({ mark, residual: 0, standardised: 0, why });
    } else observations.push({ mark, kind, modelled, mean, sigma });
  }
  return { observations, outliers, repeated: rows.filter(({ read }) => read.length > 1).length, parted };
}

/** A print is off by offsets below 1 mm and by shrink of a few percent; anything more is a slip. */
function slipOf(mark: string, i: number, value: number, modelled: number): Fault[] {
  const far = Math.max(1, 0.05 * modelled);
  if (Math.abs(value - modelled) <= far) return [];
  const inches = Math.abs(value * 25.4 - modelled) <= far;
  const hint = inches
    ? `if it was read in inches, write "${plain(value, 4)} in"`
    : 'a slip of the digits, or another feature?';
  return [
    {
      path: `readings.${mark}.read[${i}]`,
      value: `${plain(value, 3)} mm`,
      allowed: `is far from the ${plain(modelled)} mm of the file; ${hint}`,
    },
  ];
}
