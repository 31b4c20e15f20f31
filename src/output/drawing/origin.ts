import type { Point } from '../../parts/part-views.js';
import { isWithin } from './bands.js';
import { ARROW, arrowInk, circleInk, type Ink, textInk } from './ink.js';
import type { LaidView } from './sheet-layout.js';
import type { SheetViews } from './sheets.js';
import { overlaps, shareInside, textBox } from './text-box.js';

/** Radius of the open circle that marks an origin, and how far off it the arrows of its axes end [mm of paper]. */
const RADIUS = 1.5;
const REACH = 7;
/** Height of their letters, and how far off its arrow a letter stands [mm of paper]. */
const LETTER = 2;
const BESIDE = 1.8;

type Text = Extract<Ink, { kind: 'text' }>;

/**
 * The origin of the hole table, in each view along the axis that shows one of its holes: an open circle with arrows
 * along x and y; of a view that has an origin of its own, that one. Heights of lying holes are counted from the same place in the side view, along z, unless each body has
 * an origin of its own.
 *
 * @param placed the views on the paper
 * @param views  the same views, and the holes of the table
 * @param drawn  what stands on the paper already: letters keep clear of its texts, and of leaders
 */
export function originInk(
  placed: readonly LaidView[],
  { holes, end, other, side, inUse }: SheetViews,
  drawn: readonly Ink[],
): Ink[] {
  const texts = drawn.filter((ink): ink is Text => ink.kind === 'text');
  const isLying = inUse === undefined && holes.some(({ height }) => height !== undefined);
  return placed.flatMap(({ view, at, box, leaders }) => {
    const origin = at([0, 0]);
    const led = leaders.flatMap(({ points }) => points.slice(1).map((to, i) => [points[i]!, to] as const));
    const isFree = (text: Text) => {
      const box = textBox(text);
      const shifted = { min: less(box.min, origin), max: less(box.max, origin) };
      return !texts.some((other) => overlaps(box, textBox(other))) && !led.some(([a, b]) => shareInside(a, b, shifted));
    };
    if (view === side && isLying) return markInk(origin, [{ name: 'z', way: [-1, 0] }], isFree);
    const { seenFrom, origin: own } = view;
    if (seenFrom === undefined || !(own || view === end || view === other)) return [];
    const isSeen = holes.some(({ at: [x, y] }) => isWithin([seenFrom * x, y], box));
    return isSeen ? markInk(own ? at(own) : origin, axesFrom(seenFrom), isFree) : [];
  });
}

function axesFrom(end: 1 | -1): Axis[] {
  return [
    { name: 'x', way: [end, 0] },
    { name: 'y', way: [0, 1] },
  ];
}

/** An axis of the table, and which way it runs in a view, y upwards. */
interface Axis {
  readonly name: string;
  readonly way: Point;
}

function markInk([x, y]: Point, axes: readonly Axis[], isFree: (text: Text) => boolean): Ink[] {
  return [
    circleInk('narrow', [x, y], RADIUS),
    ...axes.map(({ way: [dx, dy] }) => arrowInk([x + REACH * dx, y - REACH * dy], [x, y], false)),
    ...axes.flatMap(({ name, way: [dx, dy] }) => {
      const along = REACH - ARROW.length / 2;
      const beside = [1, -1].map((side): Text => {
        const [u, v] = [along * dx - side * BESIDE * dy, along * dy - side * BESIDE * dx];
        return textInk(name, { at: [x + u, y - v + LETTER / 2], height: LETTER, anchor: 'middle' });
      });
      return beside.filter(isFree).slice(0, 1);
    }),
  ];
}

function less([x, y]: Point, [x0, y0]: Point): Point {
  return [x - x0, y - y0];
}
