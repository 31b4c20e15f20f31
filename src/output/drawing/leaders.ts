import type { Point, SizeMark } from '../../parts/part-views.js';
import { arrowInk, type Ink, lineInk } from './ink.js';
import type { PlacedView } from './sheet-layout.js';
import { OVER_LINE, sizeWidth } from './size-text.js';
import { RISER_CLEAR, RISER_PITCH, SHELF, shelfStart } from './zones.js';

type SizeInk = (mark: SizeMark, place: Point, how: { turn: number; anchor: 'start' | 'middle' }) => Ink;

/**
 * Lines from circles to shelves right of the view, the texts on them. What lies in the upper half goes to shelves at
 * the top, the rest to the foot; the farther left, the farther out, unless two lines would cross.
 */
export function leadersInk({ view, box, beside, at: onPaper }: PlacedView, sizeInk: SizeInk): Ink[] {
  const marks = view.sizes.filter(({ side }) => side === 'leader').sort((a, b) => a.to[0] - b.to[0]);
  const middle = (box.min[1] + box.max[1]) / 2;
  const [upper, lower] = [marks.filter(({ to }) => to[1] > middle), marks.filter(({ to }) => to[1] <= middle)];
  const [low, high] = [onPaper(box.min), onPaper(box.max)];
  const x = high[0] + shelfStart(beside.right);
  const foot = Math.max(low[1] - SHELF.first, high[1] + SHELF.first + SHELF.next * (marks.length - 1));
  const drawn = (mark: SizeMark, y: number): Ink[] => {
    const [tip, shelf] = [onPaper(mark.to), [x, y] as const];
    return [
      lineInk('narrow', tip, shelf),
      lineInk('narrow', shelf, [x + sizeWidth(mark) + 1, y]),
      arrowInk(tip, shelf, false),
      sizeInk(mark, [x + 0.8, y - OVER_LINE], { turn: 0, anchor: 'start' }),
    ];
  };
  const onShelves = (group: readonly SizeMark[], shelf: (i: number) => number) => {
    const tips = group.map(({ to }) => onPaper(to));
    return uncrossed(tips, (i): Point => [x, shelf(i)]).flatMap((which, i) => drawn(group[which]!, shelf(i)));
  };
  return [
    ...onShelves(upper, (i) => high[1] + SHELF.first + SHELF.next * i),
    ...onShelves(lower, (i) => foot - SHELF.next * i),
  ];
}

/** Which tip each shelf takes, so that no two lines cross: two that do change their shelves, which makes both shorter. */
function uncrossed(tips: readonly Point[], shelf: (i: number) => Point): number[] {
  const order = tips.map((_, i) => i);
  const pairs = order.flatMap((i) => order.slice(i + 1).map((j) => [i, j] as const));
  for (;;) {
    const found = pairs.find(([i, j]) => cross([tips[order[i]!]!, shelf(i)], [tips[order[j]!]!, shelf(j)]));
    if (!found) return order;
    const [i, j] = found;
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
}

type Line = readonly [Point, Point];

function cross(one: Line, other: Line): boolean {
  const side = ([a, b]: Line, [x, y]: Point) => (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]);
  const parts = (line: Line, [from, to]: Line) => side(line, from) * side(line, to) < -1e-9;
  return parts(one, other) && parts(other, one);
}

/** Lines up from features in a row, each with its text along it above the view, moved aside where they crowd. */
export function risersInk({ view, box, at: onPaper }: PlacedView, sizeInk: SizeInk): Ink[] {
  const top = onPaper(box.max)[1];
  const marks = view.sizes.filter(({ side }) => side === 'riser').sort((a, b) => a.to[0] - b.to[0]);
  const places = spaced(marks.map(({ to }) => onPaper(to)[0]));
  return marks.flatMap((mark, i) => {
    const tip = onPaper(mark.to);
    const [x, start] = [places[i]!, top - RISER_CLEAR];
    const knee: Point = [tip[0], top - 0.5];
    const end: Point = [x, start - sizeWidth(mark)];
    return [
      lineInk('narrow', tip, knee),
      lineInk('narrow', knee, [x, start]),
      lineInk('narrow', [x, start], end),
      arrowInk(tip, knee, false),
      sizeInk(mark, [x - OVER_LINE, start], { turn: 90, anchor: 'start' }),
    ];
  });
}

/** Rising places moved as little as it takes to stand clear of each other. */
function spaced(places: readonly number[]): number[] {
  const moved: number[] = [];
  for (const place of places) moved.push(Math.max(place, (moved.at(-1) ?? Number.NEGATIVE_INFINITY) + RISER_PITCH));
  const late = moved.reduce((sum, place, i) => sum + place - places[i]!, 0) / Math.max(1, moved.length);
  return moved.map((place) => place - late);
}
