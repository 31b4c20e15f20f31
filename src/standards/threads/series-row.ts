import type { SourceKey } from '../sources.js';

/** The families of threads in the tables. */
export type SeriesName = 'trapezoidal' | 'acme' | 'metric-v' | 'unified';

/** One screw of a series. */
export interface SeriesRow {
  readonly series: SeriesName;
  /** nominal major diameter [mm] */
  readonly major: number;
  /** distance of neighbouring crests [mm] */
  readonly pitch: number;
  /** number of separate threads side by side */
  readonly starts: number;
  /** normalised designation, right-handed */
  readonly designation: string;
  /** the plan it stands in, or common practice */
  readonly source: SourceKey;
}
