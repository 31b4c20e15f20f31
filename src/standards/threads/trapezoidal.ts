import { requirePositive } from '../../units/require.js';
import { tidy } from '../rounding.js';
import type { SourceKey } from '../sources.js';
import type { SeriesRow } from './series-row.js';

/** Basic sizes of a trapezoidal thread [mm]. */
export interface TrapezoidalSizes {
  /** d2 = D2 */
  readonly pitchDiameter: number;
  /** d3, root of the screw */
  readonly screwMinor: number;
  /** D1, crest of the nut */
  readonly nutMinor: number;
  /** D4, root of the nut */
  readonly nutMajor: number;
  /** H1, depth over which the flanks overlap */
  readonly engagement: number;
  /** width of a crest of the basic profile, along the axis */
  readonly crestFlat: number;
}

/**
 * Crest clearance a_c of a trapezoidal thread by its pitch: up to 1.75 mm 0.15, up to 5.5 mm 0.25,
 * up to 13 mm 0.5, above 1. The pitches of the standard (1.5; 2 to 5; 6 to 12; 14 to 44) fall inside those steps.
 *
 * @param pitch  P   distance of neighbouring crests          [mm]  > 0
 * @returns a_c, radial gap between a crest and its root      [mm]
 * @throws InputError pitch is not above 0
 * @source iso-2901: clearance a_c by pitch
 * @example trapezoidalClearance(2) // 0.25 mm
 */
export function trapezoidalClearance(pitch: number): number {
  requirePositive('pitch', pitch);
  if (pitch <= 1.75) return 0.15;
  if (pitch <= 5.5) return 0.25;
  return pitch <= 13 ? 0.5 : 1;
}

/**
 * Basic sizes of a trapezoidal thread.
 *
 *     d2 = d − P/2   d3 = d − P − 2·a_c   D1 = d − P   D4 = d + 2·a_c   H1 = P/2   w = 0.366025·P
 *
 * @param p.major  d  nominal major diameter                  [mm]  > 0
 * @param p.pitch  P  distance of neighbouring crests         [mm]  > 0
 * @returns d2, d3, D1, D4, H1 and crest flat                 [mm]
 * @throws InputError a value is not above 0
 * @validity the root d3 is above 0 only for P + 2·a_c < d
 * @source iso-2904: formulas of the basic dimensions
 * @example trapezoidalSizes({ major: 8, pitch: 2 }).screwMinor // 5.5 mm
 */
export function trapezoidalSizes(p: { readonly major: number; readonly pitch: number }): TrapezoidalSizes {
  requirePositive('major', p.major);
  const clearance = trapezoidalClearance(p.pitch);
  return {
    pitchDiameter: tidy(p.major - p.pitch / 2),
    screwMinor: tidy(p.major - p.pitch - 2 * clearance),
    nutMinor: tidy(p.major - p.pitch),
    nutMajor: tidy(p.major + 2 * clearance),
    engagement: tidy(p.pitch / 2),
    crestFlat: tidy(p.pitch * (0.5 - Math.tan(Math.PI / 12) / 2)),
  };
}

/** [diameter, preferred pitch, further pitches] of the general plan, 8 to 60 mm. Confirmed; 11 mm uncertain. */
const PLAN: readonly (readonly [number, number, ...number[]])[] = [
  [8, 1.5],
  [9, 2, 1.5],
  [10, 2, 1.5],
  [11, 2, 3],
  [12, 3, 2],
  [14, 3, 2],
  [16, 4, 2],
  [18, 4, 2],
  [20, 4, 2],
  [22, 5, 8, 3],
  [24, 5, 8, 3],
  [26, 5, 8, 3],
  [28, 5, 8, 3],
  [30, 6, 10, 3],
  [32, 6, 10, 3],
  [34, 6, 10, 3],
  [36, 6, 10, 3],
  [38, 7, 10, 3],
  [40, 7, 10, 3],
  [42, 7, 10, 3],
  [44, 7, 12, 3],
  [46, 8, 12, 3],
  [48, 8, 12, 3],
  [50, 8, 12, 3],
  [52, 8, 12, 3],
  [55, 9, 14, 3],
  [60, 9, 14, 3],
];

/** [diameter, pitch, starts…] met in hobby machines beside the plan. */
const HOBBY: readonly (readonly [number, number, ...number[]])[] = [
  [6, 1, 1],
  [6, 2, 1],
  [8, 1.5, 2, 4],
  [8, 2, 1, 2, 4],
  [10, 2, 2, 4],
  [10, 3, 1, 2, 4],
  [12, 2, 2, 4],
  [12, 3, 2, 4],
  [14, 3, 2, 4],
  [14, 4, 1, 2],
  [16, 4, 2, 4],
  [18, 4, 2, 4],
  [20, 4, 2, 4],
  [22, 5, 2, 4],
  [24, 5, 2, 4],
  [28, 5, 2, 4],
  [30, 6, 2, 4],
  [32, 6, 2, 4],
  [36, 6, 2, 4],
  [40, 7, 2, 4],
];

function row(major: number, pitch: number, starts: number, source: SourceKey): SeriesRow {
  const lead = tidy(pitch * starts);
  const designation = starts === 1 ? `Tr${major}x${pitch}` : `Tr${major}x${lead}(P${pitch})`;
  return { series: 'trapezoidal', major, pitch, starts, designation, source };
}

/** The trapezoidal series: the general plan from 8 to 60 mm, then the sizes of common practice, multi-start included. */
export const TRAPEZOIDAL_SERIES: readonly SeriesRow[] = [
  ...PLAN.flatMap(([major, ...pitches]) => pitches.map((pitch) => row(major, pitch, 1, 'iso-2902'))),
  ...HOBBY.flatMap(([major, pitch, ...starts]) => starts.map((count) => row(major, pitch, count, 'common-practice'))),
];
