import { requirePositive } from '../../units/require.js';
import { tidy } from '../rounding.js';
import type { SeriesRow } from './series-row.js';

/** Basic sizes of a 60 degree V thread, metric or unified [mm]. */
export interface VSizes {
  /** d2 = D2 */
  readonly pitchDiameter: number;
  /** d3, root of the screw with a radius of H/6 */
  readonly screwMinor: number;
  /** D1, crest of the nut */
  readonly nutMinor: number;
  /** D, root of the nut */
  readonly nutMajor: number;
  /** H1, depth over which the flanks overlap */
  readonly engagement: number;
  /** width of a crest of the basic profile, along the axis */
  readonly crestFlat: number;
}

/**
 * Basic sizes of a 60 degree V thread.
 *
 *     d2 = d − 0.649519·P   d3 = d − 1.226869·P   D1 = d − 1.082532·P   H1 = 0.541266·P   crest flat = P/8
 *
 * @param p.major  d  nominal major diameter                   [mm]  > 0
 * @param p.pitch  P  distance of neighbouring crests          [mm]  > 0
 * @returns d2, d3, D1, D, H1 and crest flat                   [mm]
 * @throws InputError a value is not above 0
 * @source iso-724: formulas of the basic dimensions
 * @example vSizes({ major: 8, pitch: 1.25 }).pitchDiameter // 7.188 mm
 */
export function vSizes(p: { readonly major: number; readonly pitch: number }): VSizes {
  requirePositive('major', p.major);
  requirePositive('pitch', p.pitch);
  const height = (Math.sqrt(3) / 2) * p.pitch;
  return {
    pitchDiameter: tidy(p.major - 0.75 * height),
    screwMinor: tidy(p.major - (17 / 12) * height),
    nutMinor: tidy(p.major - 1.25 * height),
    nutMajor: p.major,
    engagement: tidy(0.625 * height),
    crestFlat: tidy(p.pitch / 8),
  };
}

/** [diameter, coarse pitch, usual fine pitches…]. M3 to M12 coarse confirmed, the rest from memory. */
const PLAN: readonly (readonly [number, number, ...number[]])[] = [
  [3, 0.5, 0.35],
  [3.5, 0.6],
  [4, 0.7, 0.5],
  [5, 0.8, 0.5],
  [6, 1, 0.75],
  [7, 1, 0.75],
  [8, 1.25, 1, 0.75],
  [10, 1.5, 1.25, 1],
  [12, 1.75, 1.5, 1.25, 1],
  [14, 2, 1.5, 1.25],
  [16, 2, 1.5, 1],
  [18, 2.5, 2, 1.5],
  [20, 2.5, 2, 1.5],
  [22, 2.5, 2, 1.5],
  [24, 3, 2, 1.5],
  [27, 3, 2, 1.5],
  [30, 3.5, 2, 1.5],
  [33, 3.5, 2, 1.5],
  [36, 4, 3, 2],
  [39, 4, 3, 2],
  [42, 4.5, 3, 2],
  [45, 4.5, 3, 2],
  [48, 5, 3, 2],
  [52, 5, 4, 3, 2],
  [56, 5.5, 4, 3, 2],
  [60, 5.5, 4, 3, 2],
];

/** Coarse pitch by nominal diameter [mm], M3 to M60. */
export const METRIC_COARSE: ReadonlyMap<number, number> = new Map(PLAN.map(([major, coarse]) => [major, coarse]));

/** The metric V series: coarse pitches of M3 to M60 and the usual fine ones. */
export const METRIC_SERIES: readonly SeriesRow[] = PLAN.flatMap(([major, ...pitches]) =>
  pitches.map((pitch, i) => ({
    series: 'metric-v' as const,
    major,
    pitch,
    starts: 1,
    designation: i === 0 ? `M${major}` : `M${major}x${pitch}`,
    source: 'iso-261' as const,
  })),
);
