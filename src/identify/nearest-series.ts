import type { ThreadForm } from '../standards/threads/form.js';
import { ALL_SERIES } from '../standards/threads/series.js';
import type { SeriesName, SeriesRow } from '../standards/threads/series-row.js';
import { halfWidth, type Measured } from '../units/measured.js';
import { type Candidate, candidate } from './candidates.js';
import { sigmasOutside } from './likelihood.js';

/** A row of a series and how far a screw lies from it. */
export interface NearestRow {
  readonly row: SeriesRow;
  /** measured less nominal [mm] */
  readonly majorResidual: number;
  /** measured less nominal [mm] */
  readonly pitchResidual: number;
  /** distance outside the ranges of the row in standard deviations, major and pitch together; 0 inside both */
  readonly sigma: number;
}

/** Least standard deviation taken, so that a stated size without uncertainty still compares: 5 µm, 0.05 % of a pitch. */
const LEAST_DEVIATION = { major: 0.005, pitchShare: 0.0005 } as const;

/** Rows that can be the nearest two: the tolerances of the standards are far below the steps of the series. */
const NEARBY = 10;

/** A pitch is read to within a few hundredths, a worn crest may be tenths away. */
const PITCH_WEIGHT = 4;

/**
 * The two rows of the series nearest to a screw. Trapezoidal and Acme rows are searched together, since eye and caliper
 * cannot tell 30 from 29 degrees, and metric and unified V rows likewise. Starts do not matter here.
 *
 * @param p.form  trapezoidal, acme or metric-v
 * @param p.major measured major diameter                      [mm]
 * @param p.pitch measured pitch                               [mm]
 * @returns the nearest row and the next, residuals in [mm] and in standard deviations
 * @source derived: distance outside the range of the standard over half the worst-case half-width
 * @example nearestSeries({ form: 'trapezoidal', major: { least: 7.9, likely: 7.93, most: 7.96 }, pitch: { least: 1.995, likely: 2, most: 2.005 } })[0].row.designation // 'Tr8x2'
 */
export function nearestSeries(p: {
  readonly form: ThreadForm;
  readonly major: Measured;
  readonly pitch: Measured;
}): readonly [NearestRow, NearestRow] {
  const rows = nearby(p.form === 'metric-v', p.major.likely, p.pitch.likely).map((row) =>
    compared(candidate(row), p.major, p.pitch),
  );
  const gap = (one: NearestRow) => Math.hypot(one.majorResidual, one.pitchResidual);
  const [first, second] = rows.sort((a, b) => a.sigma - b.sigma || gap(a) - gap(b));
  return [first!, second!];
}

/** The rows of one family nearest by plain distance, each diameter and pitch once. */
function nearby(sharp: boolean, major: number, pitch: number): SeriesRow[] {
  const family = ALL_SERIES.filter((row) => isSharp(row.series) === sharp);
  const away = family.map((row) => Math.hypot(row.major - major, PITCH_WEIGHT * (row.pitch - pitch)));
  const order = [...family.keys()].sort((a, b) => away[a]! - away[b]!);
  const near = order.slice(0, 4 * NEARBY).map((i) => family[i]!);
  return near.filter((row, i) => near.findIndex((other) => sameThread(row, other)) === i).slice(0, NEARBY);
}

function sameThread(a: SeriesRow, b: SeriesRow): boolean {
  return a.series === b.series && a.major === b.major && a.pitch === b.pitch;
}

function isSharp(series: SeriesName): boolean {
  return series === 'metric-v' || series === 'unified';
}

function compared(one: Candidate, major: Measured, pitch: Measured): NearestRow {
  const majorDeviation = Math.max(halfWidth(major) / 2, LEAST_DEVIATION.major);
  const pitchDeviation = Math.max(halfWidth(pitch) / 2, LEAST_DEVIATION.pitchShare * one.row.pitch);
  return {
    row: one.row,
    majorResidual: major.likely - one.row.major,
    pitchResidual: pitch.likely - one.row.pitch,
    sigma: Math.hypot(
      sigmasOutside(major.likely, majorDeviation, one.major),
      sigmasOutside(pitch.likely, pitchDeviation, one.pitch),
    ),
  };
}
