import type { SizeMark } from '../../parts/part-views.js';
import { ARROW } from './ink.js';
import { sizeWidth } from './size-text.js';

/** Sides beside a view on which dimension lines stand. */
export const STRAIGHT = ['below', 'above', 'left', 'right'] as const;
export type Straight = (typeof STRAIGHT)[number];

/** Free room between two dimensions on one line. */
const APART = 1.5;

/** A dimension line in its place: along its side in mm of paper, counted from the part's origin, upwards or to the right. */
export interface Tiered {
  readonly mark: SizeMark;
  /** 0 next to the view */
  readonly tier: number;
  /** what is measured */
  readonly ends: readonly [number, number];
  /** the line, which reaches past them where arrows or figures stand outside */
  readonly line: readonly [number, number];
  /** where the text stands */
  readonly text: readonly [number, number];
  /** the text reaches past what is measured, so that the extension lines must end on the line */
  readonly over: boolean;
  /** arrows point inwards from beyond */
  readonly squeezed: boolean;
}

/** A dimension line before its tier is known. */
type Candidate = Omit<Tiered, 'tier'>;

/**
 * Dimension lines of one side: smaller ones nearer to the view, and on one line what finds room there. A text that is
 * longer than its line stands over its middle all the same where no extension line crosses it, and else beyond its
 * line, clear of them.
 */
export function tiersOn(sizes: readonly SizeMark[], side: Straight, scale: number): Tiered[] {
  const axis = side === 'below' || side === 'above' ? 0 : 1;
  const marks = sizes.filter((mark) => mark.side === side).sort((a, b) => a.value - b.value);
  const placed: Tiered[] = [];
  for (const [i, mark] of marks.entries()) {
    const crossings = marks.slice(i + 1).flatMap(({ from, to }) => [scale * from[axis], scale * to[axis]]);
    const choices = candidates(mark, { ends: endsOf(mark, axis, scale), side, crossings }).map((one): Tiered => {
      const tier = placed.reduce((free, other) => (overlap(one, other) ? Math.max(free, other.tier + 1) : free), 0);
      return { ...one, tier };
    });
    placed.push(choices.reduce((best, one) => (one.tier < best.tier ? one : best)));
  }
  return placed;
}

function endsOf({ from, to }: SizeMark, axis: 0 | 1, scale: number): [number, number] {
  const [a, b] = [scale * from[axis], scale * to[axis]];
  return a < b ? [a, b] : [b, a];
}

/** What a dimension line is set between, and the extension lines of larger ones. */
interface Place {
  readonly ends: readonly [number, number];
  readonly side: Straight;
  readonly crossings: readonly number[];
}

/** Ways to set a dimension, the best first. */
function candidates(mark: SizeMark, { ends, side, crossings }: Place): Candidate[] {
  const [low, high] = ends;
  const width = sizeWidth(mark);
  const start = (low + high - width) / 2;
  const about = { mark, ends, squeezed: high - low < 3 * ARROW.length };
  const middle = { ...about, line: ends, text: [start, start + width] as const, over: high - low <= width + 1 };
  if (!middle.over) return [middle];
  const beyond = about.squeezed ? 2 * ARROW.length : 0;
  const line = [low - beyond, high + beyond] as const;
  const after = clearOf(line[1] + 0.8, width, crossings);
  const before =
    -clearOf(
      -(line[0] - 0.8),
      width,
      crossings.map((at) => -at),
    ) - width;
  const outside = [after, before].map((from): Candidate => {
    const text = [from, from + width] as const;
    return { ...about, line: [Math.min(line[0], from), Math.max(line[1], from + width)], text, over: false };
  });
  if (after - high > low - before - width) outside.reverse();
  // the text stands above the line as it is read, so towards the view below and right of it
  const isAway = side === 'above' || side === 'left';
  const isFree = isAway && crossings.every((at) => at < start - 0.5 || at > start + width + 0.5);
  return isFree ? [{ ...middle, line }, ...outside] : outside;
}

/** The first place from here on where a text crosses no extension line. */
function clearOf(start: number, width: number, crossings: readonly number[]): number {
  return [...crossings]
    .sort((a, b) => a - b)
    .reduce((free, at) => (at > free - 0.5 && at < free + width ? at + 0.8 : free), start);
}

function overlap(a: Candidate, b: Candidate): boolean {
  const span = ({ line, text }: Candidate) => [Math.min(line[0], text[0]), Math.max(line[1], text[1])] as const;
  const [[a0, a1], [b0, b1]] = [span(a), span(b)];
  return a0 < b1 + APART && b0 < a1 + APART;
}
