import type { SizeMark } from '../../parts/part-views.js';
import { sizeWidth } from './size-text.js';
import { ARROW } from './svg.js';

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
  /** arrows point inwards from beyond */
  readonly squeezed: boolean;
}

/**
 * Dimension lines of one side: smaller ones nearer to the view, and on one line what finds room there. A text that is
 * longer than its line stands beyond it, where no extension line crosses it.
 */
export function tiersOn(sizes: readonly SizeMark[], side: Straight, scale: number): Tiered[] {
  const axis = side === 'below' || side === 'above' ? 0 : 1;
  const marks = sizes.filter((mark) => mark.side === side).sort((a, b) => a.value - b.value);
  const crossings = marks.flatMap(({ from, to }) => [scale * from[axis], scale * to[axis]]);
  const placed: Tiered[] = [];
  for (const mark of marks) {
    const one = lineOf(mark, axis, scale, crossings);
    const tier = placed.reduce((free, other) => (overlap(one, other) ? Math.max(free, other.tier + 1) : free), 0);
    placed.push({ ...one, tier });
  }
  return placed;
}

function lineOf(mark: SizeMark, axis: 0 | 1, scale: number, crossings: readonly number[]): Omit<Tiered, 'tier'> {
  const [low, high] = [mark.from[axis], mark.to[axis]].map((at) => scale * at).sort((a, b) => a - b) as [
    number,
    number,
  ];
  const width = sizeWidth(mark);
  const middle = (low + high) / 2;
  const about = { mark, ends: [low, high] as const };
  if (high - low > width + 1)
    return { ...about, line: [low, high], text: [middle - width / 2, middle + width / 2], squeezed: false };
  const squeezed = high - low < 3 * ARROW.length;
  const beyond = squeezed ? 2 * ARROW.length : 0;
  const after = clearOf(high + beyond + 0.8, width, crossings);
  const before =
    -clearOf(
      -(low - beyond - 0.8),
      width,
      crossings.map((at) => -at),
    ) - width;
  const start = after - high <= low - before - width ? after : before;
  const text = [start, start + width] as const;
  return {
    ...about,
    line: [Math.min(low - beyond, text[0]), Math.max(high + beyond, text[1])],
    text,
    squeezed,
  };
}

/** The first place from here on where a text crosses no extension line. */
function clearOf(start: number, width: number, crossings: readonly number[]): number {
  return [...crossings]
    .sort((a, b) => a - b)
    .reduce((free, at) => (at > free - 0.5 && at < free + width ? at + 0.8 : free), start);
}

function overlap(a: Pick<Tiered, 'line'>, b: Pick<Tiered, 'line'>): boolean {
  return a.line[0] < b.line[1] + APART && b.line[0] < a.line[1] + APART;
}
