import { INCH, tidy } from '../rounding.js';
import { inchText } from './fraction.js';
import type { SeriesRow } from './series-row.js';

/** One row of the unified series: size as written, inches, threads an inch coarse and fine (0: none). */
type UnifiedRow = readonly [size: string, inches: number, coarse: number, fine: number];

/**
 * Coarse and fine series from #6 to 2 in, that is 3.5 to 50.8 mm. From memory, save that 1/4-20, 5/16-18 and 3/8-16
 * are common knowledge of the trade.
 */
const PLAN: readonly UnifiedRow[] = [
  ['#6', 0.138, 32, 40],
  ['#8', 0.164, 32, 36],
  ['#10', 0.19, 24, 32],
  ['#12', 0.216, 24, 28],
  ['1/4', 1 / 4, 20, 28],
  ['5/16', 5 / 16, 18, 24],
  ['3/8', 3 / 8, 16, 24],
  ['7/16', 7 / 16, 14, 20],
  ['1/2', 1 / 2, 13, 20],
  ['9/16', 9 / 16, 12, 18],
  ['5/8', 5 / 8, 11, 18],
  ['3/4', 3 / 4, 10, 16],
  ['7/8', 7 / 8, 9, 14],
  ['1', 1, 8, 12],
  ['1 1/8', 1.125, 7, 12],
  ['1 1/4', 1.25, 7, 12],
  ['1 3/8', 1.375, 6, 12],
  ['1 1/2', 1.5, 6, 12],
  ['1 3/4', 1.75, 5, 0],
  ['2', 2, 4.5, 0],
];

/**
 * Major diameter of a numbered inch size: 0.060 in and 0.013 in a number.
 *
 * @param number size without its #                              [-]  0 to 12
 * @returns nominal major diameter                               [in]
 * @source asme-b1.1: numbered sizes
 * @example numberedSize(10) // 0.19 in
 */
export function numberedSize(number: number): number {
  return tidy(0.06 + 0.013 * number);
}

/**
 * A unified size as the trade writes it, numbered where it is one.
 *
 * @param inches nominal major diameter                          [in]
 * @returns such as `#10` or `5/16`
 * @source asme-b1.1: numbered and fractional sizes
 * @example unifiedSizeText(0.19) // '#10'
 */
export function unifiedSizeText(inches: number): string {
  const row = PLAN.find(([, size]) => Math.abs(size - inches) < 1e-6);
  return row === undefined ? inchText(inches) : row[0];
}

/**
 * The series a unified thread stands in: `UNC`, `UNF`, or `UN` for any other pitch.
 *
 * @param inches nominal major diameter                          [in]
 * @param tpi threads an inch                                    [1/in]
 * @returns UNC, UNF or UN
 * @source asme-b1.1: coarse and fine series, from memory
 * @example unifiedSeriesOf(0.3125, 18) // 'UNC'
 */
export function unifiedSeriesOf(inches: number, tpi: number): 'UNC' | 'UNF' | 'UN' {
  const row = PLAN.find(([, size]) => Math.abs(size - inches) < 1e-6);
  if (row === undefined) return 'UN';
  if (row[2] === tpi) return 'UNC';
  return row[3] === tpi ? 'UNF' : 'UN';
}

function row(size: string, inches: number, tpi: number, coarse: boolean): SeriesRow {
  return {
    series: 'unified',
    major: tidy(inches * INCH),
    pitch: tidy(INCH / tpi),
    starts: 1,
    designation: `${size}-${tpi} ${coarse ? 'UNC' : 'UNF'}`,
    source: 'asme-b1.1',
  };
}

/** The unified series, coarse and fine, #6 to 2 in. */
export const UNIFIED_SERIES: readonly SeriesRow[] = PLAN.flatMap(([size, inches, coarse, fine]) => [
  row(size, inches, coarse, true),
  ...(fine > 0 ? [row(size, inches, fine, false)] : []),
]);
