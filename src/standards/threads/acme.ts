import { requirePositive } from '../../units/require.js';
import { INCH, tidy } from '../rounding.js';
import type { SourceKey } from '../sources.js';
import { inchText } from './fraction.js';
import type { SeriesRow } from './series-row.js';

/** Basic sizes of an Acme thread [mm]. */
export interface AcmeSizes {
  readonly pitchDiameter: number;
  /** the most the root of the screw may be */
  readonly screwMinor: number;
  /** the least the crest of the nut may be */
  readonly nutMinor: number;
  /** the least the root of the nut may be */
  readonly nutMajor: number;
  /** depth over which the flanks overlap */
  readonly engagement: number;
  /** width of a crest of the basic profile, along the axis */
  readonly crestFlat: number;
}

/**
 * Clearance on diameter at the major and minor of an Acme thread: 0.020 in for 10 threads an inch and coarser,
 * 0.010 in for finer.
 *
 * @param pitch  P  distance of neighbouring crests             [mm]  > 0
 * @returns diametral clearance                                 [mm]
 * @throws InputError pitch is not above 0
 * @source asme-b1.5: general purpose threads, clearance at major and minor diameter
 * @example acmeClearance(2.54) // 0.508 mm
 */
export function acmeClearance(pitch: number): number {
  requirePositive('pitch', pitch);
  return tidy((pitch >= 2.54 - 1e-9 ? 0.02 : 0.01) * INCH);
}

/**
 * Basic sizes of a general purpose Acme thread.
 *
 *     E = D − P/2   screw minor = D − P − c   nut minor = D − P   nut major = D + c   crest flat = 0.3707·P
 *
 * @param p.major  D  nominal major diameter                    [mm]  > 0
 * @param p.pitch  P  distance of neighbouring crests           [mm]  > 0
 * @returns pitch diameter, minors, nut major, engagement and crest flat [mm]
 * @throws InputError a value is not above 0
 * @source asme-b1.5: basic dimensions, general purpose
 * @example acmeSizes({ major: 9.525, pitch: 2.54 }).screwMinor // 6.477 mm
 */
export function acmeSizes(p: { readonly major: number; readonly pitch: number }): AcmeSizes {
  requirePositive('major', p.major);
  const clearance = acmeClearance(p.pitch);
  return {
    pitchDiameter: tidy(p.major - p.pitch / 2),
    screwMinor: tidy(p.major - p.pitch - clearance),
    nutMinor: tidy(p.major - p.pitch),
    nutMajor: tidy(p.major + clearance),
    engagement: tidy(p.pitch / 2),
    crestFlat: tidy(0.3707 * p.pitch),
  };
}

/** [diameter in inches, threads an inch] of the preferred series. 1/4 to 1 confirmed, 7/16 and above 1 memory. */
const PREFERRED: readonly (readonly [number, number])[] = [
  [1 / 4, 16],
  [5 / 16, 14],
  [3 / 8, 12],
  [7 / 16, 12],
  [1 / 2, 10],
  [5 / 8, 8],
  [3 / 4, 6],
  [7 / 8, 6],
  [1, 5],
  [1.125, 5],
  [1.25, 5],
  [1.375, 4],
  [1.5, 4],
  [1.75, 4],
  [2, 4],
  [2.25, 3],
];

/** [diameter in inches, threads an inch, starts…] met in kits and small machines. */
const HOBBY: readonly (readonly [number, number, ...number[]])[] = [
  [1 / 4, 16, 2, 4],
  [5 / 16, 14, 2],
  [3 / 8, 12, 2, 4],
  [3 / 8, 10, 1, 2, 4],
  [3 / 8, 8, 1, 2, 4],
  [1 / 2, 10, 2, 4, 5],
  [1 / 2, 8, 1, 2, 4, 8],
  [5 / 8, 8, 2, 4],
  [3 / 4, 6, 2, 4],
  [1, 5, 2, 4],
];

function row(inches: number, tpi: number, starts: number, source: SourceKey): SeriesRow {
  const tail = starts === 1 ? '' : `-${starts}start`;
  return {
    series: 'acme',
    major: tidy(inches * INCH),
    pitch: tidy(INCH / tpi),
    starts,
    designation: `Acme ${inchText(inches)}-${tpi}${tail}`,
    source,
  };
}

/** The Acme series: preferred sizes from 1/4 to 2 1/4 in, then the sizes of common practice. */
export const ACME_SERIES: readonly SeriesRow[] = [
  ...PREFERRED.map(([inches, tpi]) => row(inches, tpi, 1, 'asme-b1.5')),
  ...HOBBY.flatMap(([inches, tpi, ...starts]) => starts.map((count) => row(inches, tpi, count, 'common-practice'))),
];
