import { INCH, tidy } from '../rounding.js';
import { inchText } from './fraction.js';
import { METRIC_COARSE } from './metric-v.js';
import type { SeriesName } from './series-row.js';
import { unifiedSeriesOf, unifiedSizeText } from './unified.js';

/** What a designation says about a thread. */
export interface NamedThread {
  readonly series: SeriesName;
  /** nominal major diameter [mm] */
  readonly major: number;
  /** distance of neighbouring crests [mm] */
  readonly pitch: number;
  /** number of separate threads side by side */
  readonly starts: number;
  readonly hand: 'right' | 'left';
}

/**
 * The normalised designation of a thread, without its tolerance class.
 *
 * @param thread series, major [mm], pitch [mm], starts and hand
 * @returns such as `Tr8x8(P2)`, `Tr10x2-LH`, `Acme 1/2-10-2start`, `M8`, `M8x1`, `1/4-20 UNC`
 * @source iso-2904: lead first, pitch in brackets
 * @source common-practice: starts of inch threads are written out
 * @example designationText({ series: 'trapezoidal', major: 8, pitch: 2, starts: 4, hand: 'right' }) // 'Tr8x8(P2)'
 */
export function designationText(thread: NamedThread): string {
  const left = thread.hand === 'left' ? '-LH' : '';
  return `${threadText(thread)}${left}`;
}

function threadText({ series, major, pitch, starts }: NamedThread): string {
  const lead = tidy(pitch * starts);
  const inches = tidy(major / INCH);
  const tpi = Number((INCH / pitch).toFixed(6));
  const startsText = starts === 1 ? '' : `-${starts}start`;
  if (series === 'acme') return `Acme ${inchText(inches)}-${tpi}${startsText}`;
  if (series === 'unified') {
    return `${unifiedSizeText(inches)}-${tpi} ${unifiedSeriesOf(inches, tpi)}${startsText}`;
  }
  const letters = series === 'trapezoidal' ? 'Tr' : 'M';
  if (starts > 1) return `${letters}${major}x${lead}(P${pitch})`;
  if (series === 'metric-v' && METRIC_COARSE.get(major) === pitch) return `M${major}`;
  return `${letters}${major}x${pitch}`;
}
