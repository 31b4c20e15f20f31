import type { Point, SizeMark } from '../../parts/part-views.js';
import { xmlText } from '../xml-text.js';
import { FIRST_TIER, NEXT_TIER, type PlacedView } from './sheet-layout.js';
import { at, lineTag, num, textTag, textWidth } from './svg.js';

const TEXT = 2.5;
const ARROW = { length: 2.5, half: 0.45 };
/** Extension lines start clear of the part and end past the dimension line. */
const CLEAR = 0.8;
const PAST = 1.5;

/** A size as it is written: two decimals for a size in use with its spread, three for the file's. */
export function sizeText({ value, spread, sign = '', after }: SizeMark): string {
  const figure = spread === undefined ? value.toFixed(3) : `${value.toFixed(2)} ±${roundedUp(spread)}`;
  return `${sign}${figure}${after ? ` ${after}` : ''}`;
}

/** A spread is never stated smaller than it is. */
function roundedUp(spread: number): string {
  return (Math.ceil(spread * 100 - 1e-6) / 100).toFixed(2);
}

/**
 * The dimensions of a view by ISO 129: extension lines, dimension lines with arrows, text above the line, smaller ones
 * nearer to the view.
 */
export function dimensionTags(placed: PlacedView): string[] {
  const tags: string[] = [];
  for (const side of ['below', 'above', 'left', 'right'] as const) {
    const marks = placed.view.sizes.filter((size) => size.side === side);
    const order = [...marks].sort((a, b) => a.value - b.value);
    order.forEach((mark, tier) => {
      tags.push(...straight(mark, side, FIRST_TIER + NEXT_TIER * tier, placed));
    });
  }
  const leaders = placed.view.sizes.filter((size) => size.side === 'leader');
  leaders.forEach((mark, i) => {
    tags.push(...leader(mark, i, placed));
  });
  return tags;
}

type Straight = 'below' | 'above' | 'left' | 'right';

function straight(mark: SizeMark, side: Straight, away: number, { at: onPaper, box }: PlacedView): string[] {
  const [a, b] = [onPaper(mark.from), onPaper(mark.to)];
  const [low, high] = [onPaper(box.min), onPaper(box.max)];
  const lying = side === 'below' || side === 'above';
  const outwards = side === 'below' || side === 'right' ? 1 : -1;
  const edge = { below: low[1], above: high[1], left: low[0], right: high[0] }[side] + outwards * away;
  const ends: [Point, Point] = lying
    ? [
        [a[0], edge],
        [b[0], edge],
      ]
    : [
        [edge, a[1]],
        [edge, b[1]],
      ];
  const along = lying ? 0 : 1;
  const extension = (from: Point): string => {
    const start: Point = lying ? [from[0], from[1] + outwards * CLEAR] : [from[0] + outwards * CLEAR, from[1]];
    const end: Point = lying ? [from[0], edge + outwards * PAST] : [edge + outwards * PAST, from[1]];
    return lineTag('t', start, end);
  };
  const text = sizeText(mark);
  const length = Math.abs(ends[1][along] - ends[0][along]);
  const tight = length < textWidth(text, TEXT) + 1;
  const squeezed = length < 3 * ARROW.length;
  const middle: Point = [(ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2];
  const beyond = squeezed ? 2 * ARROW.length : 0;
  const line: [Point, Point] = lying
    ? [
        [ends[0][0] - beyond, edge],
        [ends[1][0] + beyond, edge],
      ]
    : [
        [edge, ends[0][1] + beyond],
        [edge, ends[1][1] - beyond],
      ];
  const place: Point = lying
    ? tight
      ? [line[1][0] + 0.5, edge - 0.8]
      : [middle[0], edge - 0.8]
    : [edge - 0.8, tight && squeezed ? line[1][1] - 0.5 : middle[1]];
  return [
    extension(a),
    extension(b),
    lineTag('t', ...line),
    arrow(ends[0], direction(ends[1], ends[0]), squeezed),
    arrow(ends[1], direction(ends[0], ends[1]), squeezed),
    sizeTag(text, mark, place, { turn: lying ? 0 : 90, anchor: tight && (lying || squeezed) ? 'start' : 'middle' }),
  ];
}

/** A line from a circle to a shelf right of the view, the text on it. */
function leader(mark: SizeMark, index: number, { at: onPaper, box }: PlacedView): string[] {
  const tip = onPaper(mark.to);
  const shelf: Point = [onPaper(box.max)[0] + 5, onPaper(box.min)[1] - 2 - index * 6];
  const text = sizeText(mark);
  return [
    lineTag('t', tip, shelf),
    lineTag('t', shelf, [shelf[0] + textWidth(text, TEXT) + 1, shelf[1]]),
    arrow(tip, direction(shelf, tip), false),
    sizeTag(text, mark, [shelf[0] + 0.8, shelf[1] - 0.8], { turn: 0, anchor: 'start' }),
  ];
}

function sizeTag(
  text: string,
  mark: SizeMark,
  place: Point,
  how: { turn: number; anchor: 'start' | 'middle' },
): string {
  const more = ` data-size="${xmlText(mark.name)}"`;
  return textTag(text, { at: place, height: TEXT, ...how, more });
}

function direction(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

/** A filled arrow whose tip lies at the point; `outside` has it point inwards from beyond. */
function arrow(tip: Point, [dx, dy]: Point, outside: boolean): string {
  const way = outside ? -1 : 1;
  const back: Point = [tip[0] - way * ARROW.length * dx, tip[1] - way * ARROW.length * dy];
  const [nx, ny] = [-dy * ARROW.half, dx * ARROW.half];
  return `<path class="f" d="M${at(tip)}L${num(back[0] + nx)} ${num(back[1] + ny)}L${num(back[0] - nx)} ${num(back[1] - ny)}Z"/>`;
}
