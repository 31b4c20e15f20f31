import type { DrawnView, Point, SizeMark } from '../../parts/part-views.js';
import type { Bands } from './bands.js';
import { dimensionsInk } from './dimensions.js';
import { arrowInk, type Ink } from './ink.js';
import { fewestCrossings } from './leader-choice.js';
import { FORBIDDEN, inTheWay, KNEE } from './leader-cost.js';
import { type Room, type Way, waysOf } from './leader-ways.js';
import type { PlacedView } from './placed-view.js';
import { sidesOf } from './sides.js';
import { OVER_LINE, sizeInk } from './size-text.js';
import { strokesInk, unhatchedInk } from './view-ink.js';

/** A line from a feature to a shelf beside the view, and the size that stands on it. */
export interface Leader extends Way {
  readonly mark: SizeMark;
}

/**
 * Leaders of a view. Each touches its circle and comes from the circle's middle; of equal circles it takes the one that
 * it reaches most freely, and of the shelves on both sides the one to which its line crosses least.
 *
 * @param view   with its lines
 * @param scale  mm of paper a mm of the part
 * @param bands  what stands around it
 * @returns points on the paper, counted from the part's origin [mm, y downwards]
 */
export function leadersOf(view: DrawnView, scale: number, bands: Bands): Leader[] {
  const marks = view.sizes.filter(({ side }) => side === 'leader');
  if (marks.length === 0) return [];
  const placed = { view, scale, ...bands, at: ([x, y]: Point): Point => [scale * x, -scale * y] };
  const obstacles = inTheWay(placed, [...unhatchedInk(placed), ...dimensionsInk(placed)]);
  const drawn = strokesInk(placed).flatMap((ink) => sidesOf(ink));
  const choose = (room: Room) =>
    fewestCrossings(
      marks.map((mark) => waysOf(mark, placed, { drawn, room, count: marks.length })),
      obstacles,
    );
  // a knee costs something itself: it is looked for where it may save more
  const rooms = [
    ['bent', KNEE * marks.length],
    ['far', FORBIDDEN],
  ] as const;
  const { ways } = rooms.reduce((best, [room, most]) => {
    const other = best.cost > most ? choose(room) : best;
    return other.cost < best.cost ? other : best;
  }, choose('straight'));
  return ways.map((way, i) => ({ mark: marks[i]!, ...way }));
}

/** Leaders of a view in its place. */
export function leadersInk({ at, leaders }: PlacedView & { readonly leaders: readonly Leader[] }): Ink[] {
  const [left, top] = at([0, 0]);
  return leaders.flatMap(({ mark, points, runs, width }): Ink[] => {
    const line = points.map(([x, y]): Point => [left + x, top + y]);
    const [tip, next, shelf] = [line[0]!, line[1]!, line.at(-1)!];
    return [
      { kind: 'line', pen: 'narrow', points: [...line, [shelf[0] + runs * width, shelf[1]]] },
      arrowInk(tip, next, false),
      sizeInk(mark, { at: [shelf[0] + runs * 0.8, shelf[1] - OVER_LINE], anchor: runs === 1 ? 'start' : 'end' }),
    ];
  });
}
