import { type Fault, InputError } from '../units/faults.js';
import { plain } from '../units/format.js';
import { CALIPERS } from '../units/measured.js';
import { COMMON, meanReading } from './mean-reading.js';
import { type Results, readOf } from './results.js';
import type { Observation, Outlier } from './solve-print.js';

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
export function observe({ readings = {}, calipers = CALIPERS }: Results): Observed {
  const rows = Object.entries(readings).map(([mark, row]) => ({ mark, ...readOf(row) }));
  const faults = slipsOf(rows);
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
    } else observations.push({ mark, kind, modelled, mean, sigma, common: (calipers / 2) * Math.sqrt(COMMON) });
  }
  return { observations, outliers, repeated: rows.filter(({ read }) => read.length > 1).length, parted };
}

interface ReadRow {
  readonly mark: string;
  readonly modelled: number;
  readonly read: readonly number[];
}

/** Slips in one line each: a file in inches, two rows that were swapped, a row whose readings cannot be of its feature. */
function slipsOf(rows: readonly ReadRow[]): Fault[] {
  const all = rows.flatMap(({ mark, modelled, read }) => read.map((value) => ({ mark, modelled, value })));
  const inches = all.filter(({ value, modelled }) => isFar(value, modelled) && !isFar(25.4 * value, modelled));
  if (inches.length > 2 && 2 * inches.length > all.length) {
    const { value } = inches[0]!;
    return [
      {
        path: 'readings',
        value: '',
        allowed: `${inches.length} of ${all.length} look like inches: write their unit, such as "${plain(value, 4)} in", or read in mm`,
      },
    ];
  }
  const swapped = swappedRows(rows);
  const told = new Set(swapped.flat());
  return [
    ...swapped.map(([a, b]) => ({
      path: `readings.${a}`,
      value: '',
      allowed: `and ${b} look swapped: the readings of each are those of the other`,
    })),
    ...rows.filter(({ mark }) => !told.has(mark)).flatMap(rowSlip),
  ];
}

/** Pairs of rows whose readings fit each other's feature and not their own. */
function swappedRows(rows: readonly ReadRow[]): (readonly [string, string])[] {
  const fits = ({ read }: ReadRow, { modelled }: ReadRow) =>
    read.length > 0 && read.every((one) => !isFar(one, modelled));
  const wrong = rows.filter((row) => row.read.length > 0 && !fits(row, row));
  return wrong.flatMap((a, i) =>
    wrong
      .slice(i + 1)
      .filter((b) => fits(a, b) && fits(b, a))
      .map((b) => [a.mark, b.mark] as const),
  );
}

function rowSlip({ mark, modelled, read }: ReadRow): Fault[] {
  const slips = read.flatMap((value, i) => slipOf(mark, i, value, modelled));
  const [first] = slips;
  if (first && hasCommas(read, modelled)) {
    const [whole, part] = read;
    const allowed = `are decimals with a comma: write ${plain(whole!, 0)}.${plain(part!, 0)}, with a point`;
    return [{ path: `readings.${mark}.read`, value: read.join(', '), allowed }];
  }
  if (!first || slips.length < 2) return slips;
  return [{ ...first, allowed: `${first.allowed} (and ${slips.length - 1} more of ${mark})` }];
}

/** `54,53, 54,51` is read as whole numbers, every other of which is the size itself. */
function hasCommas(read: readonly number[], modelled: number): boolean {
  const isSize = (value: number, i: number) => i % 2 === 1 || !isFar(value, modelled);
  return read.length % 2 === 0 && read.every((value, i) => Number.isInteger(value) && isSize(value, i));
}

function isFar(value: number, modelled: number): boolean {
  return Math.abs(value - modelled) > Math.max(1, 0.05 * modelled);
}

/** A print is off by offsets below 1 mm and by shrink of a few percent; anything more is a slip. */
function slipOf(mark: string, i: number, value: number, modelled: number): Fault[] {
  if (!isFar(value, modelled)) return [];
  const inches = !isFar(value * 25.4, modelled);
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
