import { ACME_SERIES } from './acme.js';
import { METRIC_SERIES } from './metric-v.js';
import type { SeriesRow } from './series-row.js';
import { TRAPEZOIDAL_SERIES } from './trapezoidal.js';
import { UNIFIED_SERIES } from './unified.js';

/** Every screw of every series, right-handed. */
export const ALL_SERIES: readonly SeriesRow[] = [
  ...TRAPEZOIDAL_SERIES,
  ...ACME_SERIES,
  ...METRIC_SERIES,
  ...UNIFIED_SERIES,
];
