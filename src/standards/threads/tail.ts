import { fault } from '../../units/faults.js';
import type { SeriesName } from './series-row.js';

/** What follows the size in a designation. */
export interface ThreadTail {
  readonly hand: 'right' | 'left';
  readonly starts?: number;
  readonly tolerance?: string;
}

const METRIC_CLASS = /^[3-9][A-Ha-h](?:[3-9][A-Ha-h])?(?:\/[3-9][A-Ha-h](?:[3-9][A-Ha-h])?)?$/;
const CLASSES: Readonly<Record<SeriesName, RegExp>> = {
  trapezoidal: METRIC_CLASS,
  'metric-v': METRIC_CLASS,
  acme: /^[2-6][GC]$/i,
  unified: /^[1-3][AB]$/i,
};
const CLASS_EXAMPLES: Readonly<Record<SeriesName, string>> = {
  trapezoidal: '7e',
  'metric-v': '6g',
  acme: '2G',
  unified: '2A',
};

/**
 * Reads what follows the size: `LH` or `RH`, `2start` on inch threads, and a tolerance class, each at most once.
 *
 * @param text the whole designation, for messages
 * @param rest what follows the size
 * @param series the family of the thread, which tells the classes that can stand
 * @returns hand, and starts and class where given
 * @throws InputError a word that is none of these, or one given twice
 * @source iso-2904: LH behind the size, the class last
 * @source common-practice: starts of inch threads are written out
 * @example readThreadTail('M8x1-LH-6g', '-LH-6g', 'metric-v').hand // 'left'
 */
export function readThreadTail(text: string, rest: string, series: SeriesName): ThreadTail {
  const words = rest
    .replace(/(\d) ?-? ?starts?\b/gi, '$1start')
    .split(/[\s-]+/)
    .filter((word) => word !== '');
  let hand: 'right' | 'left' | undefined;
  let starts: number | undefined;
  let tolerance: string | undefined;
  for (const word of words) {
    const count = /^(\d{1,2})start$/i.exec(word)?.[1];
    if (/^[lr]h$/i.test(word) && hand === undefined) hand = /^l/i.test(word) ? 'left' : 'right';
    else if (count !== undefined && starts === undefined && isInch(series)) starts = Number(count);
    else if (CLASSES[series].test(word) && tolerance === undefined)
      tolerance = isInch(series) ? word.toUpperCase() : word;
    else throw fault('', text, `"${word}" is not understood; ${followers(series)}`);
  }
  return {
    hand: hand ?? 'right',
    ...(starts === undefined ? {} : { starts }),
    ...(tolerance === undefined ? {} : { tolerance }),
  };
}

function isInch(series: SeriesName): boolean {
  return series === 'acme' || series === 'unified';
}

function followers(series: SeriesName): string {
  const starts = isInch(series) ? '2start, ' : '';
  return `after the size only LH, ${starts}or a tolerance class such as ${CLASS_EXAMPLES[series]} may follow`;
}
