import { fault } from '../../units/faults.js';
import { INCH, tidy } from '../rounding.js';
import { designationText } from './designation-text.js';
import { FLANK_ANGLES, type ThreadForm } from './form.js';
import { METRIC_COARSE } from './metric-v.js';
import type { SeriesName } from './series-row.js';
import { threadSizes } from './sizes.js';
import { readThreadTail, type ThreadTail } from './tail.js';
import { numberedSize, unifiedSeriesOf } from './unified.js';

/** A thread as its designation gives it; plain data. Lengths [mm], angles [deg]. */
export interface Designation {
  /** normalised, without the tolerance class, such as `Tr8x8(P2)`, `Tr10x2-LH`, `Acme 1/2-10-2start`, `M8` */
  readonly text: string;
  readonly series: SeriesName;
  readonly form: ThreadForm;
  /** one flank to the plane across the axis [deg] */
  readonly flankAngle: number;
  readonly major: number;
  readonly pitch: number;
  /** travel of one turn, pitch × starts */
  readonly lead: number;
  readonly starts: number;
  readonly hand: 'right' | 'left';
  /** basic pitch diameter d2 */
  readonly pitchDiameter: number;
  /** root of the screw: d3, for Acme the most the minor may be */
  readonly minor: number;
  /** tolerance class as given, such as `7e` or `7H/7e` */
  readonly tolerance?: string;
}

/** What a designation may look like, for messages. */
const DESIGNATION_EXAMPLES =
  'must be a thread such as Tr8x2, Tr8x8(P2), Tr10x2-LH, Acme 3/8-10, Acme 1/2-10-2start, M8, M8x1-LH or 5/16-18 UNC';

const LEAST_MAJOR = 3;
const MOST_MAJOR = 60;
const MOST_STARTS = 12;
const SIZE = String.raw`(#\s?\d{1,2}|\d{1,2}[ -]\d{1,2}/\d{1,2}|\d{1,2}/\d{1,2}|\d*\.\d+|\d{1,2})`;
const NUMBER = String.raw`(\d+(?:\.\d+)?|\.\d+)`;
const METRIC = new RegExp(
  `^(tr|m) ?${NUMBER}(?: ?x ?(?:ph ?)?${NUMBER})?(?: ?mm)?(?: ?(?:\\( ?p ?${NUMBER} ?\\)|p ?${NUMBER}))?(?![\\d.])(.*)$`,
  'i',
);
const INCH_THREAD = new RegExp(
  `^(?:(acme|unc|unf|un)[ -]?)?${SIZE} ?- ?${NUMBER}(?: tpi)?(?![\\d.])(?:[ -]*(acme|unc|unf|un)\\b)?(.*)$`,
  'i',
);

/**
 * Reads a thread designation.
 *
 * Trapezoidal `Tr8x2`, `Tr 8 x 2`, `Tr8×2`, `Tr8x8(P2)` and `Tr 40 x 14 P7` (lead first, then the pitch), Acme
 * `Acme 3/8-10` and `Acme 1/2-10-2start`, metric V `M8`, `M8x1`, unified `1/4-20 UNC`, `UNC 1/4-20`, `#10-24` and
 * bare `5/16-18`; `LH` for a left hand and a tolerance class may follow. Upper and lower case are alike, save in
 * the class, where `H` is a nut and `h` a screw.
 *
 * @param text the designation
 * @returns the thread with its basic sizes, lengths [mm], angles [deg]
 * @throws InputError the text is no thread, the lead is no whole multiple of the pitch, the coarse pitch is not
 *   known, or the pitch is too coarse for the diameter; its path is empty
 * @validity major 3 to 60 mm, up to 12 starts, root at least half the major
 * @source iso-2904: trapezoidal
 * @source asme-b1.5: Acme
 * @source iso-261: metric V
 * @source asme-b1.1: unified
 * @example parseDesignation('Tr 8 x 8 (P2)').starts // 4
 */
export function parseDesignation(text: string): Designation {
  const plain = typeof text === 'string' && text.length <= 60 ? cleaned(text) : '';
  const metric = METRIC.exec(plain);
  if (metric !== null) return metricThread(text, metric);
  const inch = INCH_THREAD.exec(plain);
  if (inch !== null) return inchThread(text, inch);
  throw fault('', text, DESIGNATION_EXAMPLES);
}

function cleaned(text: string): string {
  return text
    .trim()
    .replace(/[×*]/g, 'x')
    .replace(/[‐-―−]/g, '-')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/\s+/g, ' ')
    .replace(/^acme ?- ?/i, 'Acme ');
}

function metricThread(text: string, match: RegExpExecArray): Designation {
  const [, letters, majorText, second, bracketed, bare, rest] = match;
  const series = letters!.toLowerCase() === 'm' ? 'metric-v' : 'trapezoidal';
  const tail = readThreadTail(text, rest!, series);
  const major = inSize(text, Number(majorText));
  const pitchText = bracketed ?? bare;
  if (second === undefined) {
    if (series === 'trapezoidal' || pitchText !== undefined) throw fault('', text, DESIGNATION_EXAMPLES);
    return thread(text, series, major, coarsePitch(text, major), tail);
  }
  const lead = Number(second);
  if (pitchText === undefined) return thread(text, series, major, lead, tail);
  const pitch = Number(pitchText);
  const starts = Math.round(lead / pitch);
  if (!(pitch > 0) || starts < 1 || Math.abs(starts * pitch - lead) > 1e-6) {
    throw fault('', text, 'lead must be a whole multiple of the pitch, such as Tr8x8(P2)');
  }
  return thread(text, series, major, pitch, { ...tail, starts: tail.starts ?? starts });
}

function coarsePitch(text: string, major: number): number {
  const pitch = METRIC_COARSE.get(major);
  if (pitch !== undefined) return pitch;
  const sizes = [...METRIC_COARSE.keys()].map((size) => `M${size}`).join(', ');
  throw fault('', text, `without a pitch must be one of ${sizes}; else write the pitch, such as M${major}x1`);
}

function inchThread(text: string, match: RegExpExecArray): Designation {
  const [, before, size, tpiText, after, rest] = match;
  const name = (before ?? after ?? 'un').toLowerCase();
  if (before !== undefined && after !== undefined) throw fault('', text, DESIGNATION_EXAMPLES);
  const series = name === 'acme' ? 'acme' : 'unified';
  const tail = readThreadTail(text, rest!, series);
  const inches = inchSize(size!);
  const tpi = Number(tpiText);
  if (!(tpi >= 1 && tpi <= 100)) throw fault('', text, 'threads an inch must be 1 to 100');
  const major = inSize(text, tidy(inches * INCH));
  const known = unifiedSeriesOf(inches, tpi).toLowerCase();
  if (name !== 'acme' && name !== 'un' && name !== known) {
    throw fault('', text, `is not ${name.toUpperCase()}; must be ${size}-${tpi} ${known.toUpperCase()}`);
  }
  return thread(text, series, major, tidy(INCH / tpi), tail);
}

function inchSize(text: string): number {
  if (text.startsWith('#')) return numberedSize(Number(text.slice(1)));
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (mixed === null) return Number(text);
  return Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
}

function inSize(text: string, major: number): number {
  if (major >= LEAST_MAJOR && major <= MOST_MAJOR) return major;
  throw fault('', text, `major diameter must be ${LEAST_MAJOR} to ${MOST_MAJOR} mm, here it is ${tidy(major)} mm`);
}

function thread(text: string, series: SeriesName, major: number, pitch: number, tail: ThreadTail): Designation {
  const starts = tail.starts ?? 1;
  if (!(starts >= 1 && starts <= MOST_STARTS)) throw fault('', text, `starts must be 1 to ${MOST_STARTS}`);
  const form = series === 'unified' ? 'metric-v' : series;
  if (!(pitch >= 0.2)) throw fault('', text, 'pitch must be at least 0.2 mm');
  const sizes = threadSizes({ form, major, pitch });
  if (sizes.screwMinor < major / 2) throw fault('', text, tooCoarse(series, major, pitch, sizes.screwMinor));
  const { hand, tolerance } = tail;
  return {
    text: designationText({ series, major, pitch, starts, hand }),
    series,
    form,
    flankAngle: FLANK_ANGLES[form],
    major,
    pitch,
    lead: tidy(pitch * starts),
    starts,
    hand,
    pitchDiameter: sizes.pitchDiameter,
    minor: sizes.screwMinor,
    ...(tolerance === undefined ? {} : { tolerance }),
  };
}

function tooCoarse(series: SeriesName, major: number, pitch: number, root: number): string {
  const told = `pitch ${tidy(pitch)} mm is too coarse for ${tidy(major)} mm: the root would be ${Math.max(0, root).toFixed(2)} mm`;
  if (series !== 'trapezoidal') return `${told}; the root must be at least half the major diameter`;
  return `${told}; if ${pitch} mm is the lead, write the pitch too, such as Tr8x8(P2)`;
}
