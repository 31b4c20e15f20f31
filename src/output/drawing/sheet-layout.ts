import type { DrawnView, Point, SizeMark, Stroke } from '../../parts/part-views.js';

/** A4 lying, mm of paper, y downwards. */
export const PAPER = { width: 297, height: 210 };
/** ISO 5457: 20 mm to bind on the left, 10 mm elsewhere. */
export const FRAME = { left: 20, top: 10, right: 287, bottom: 200 };
/** ISO 7200: a title block of 180 mm, low on the right. */
export const TITLE = { left: 107, top: 160, right: 287, bottom: 200 };

/** ISO 5455, largest first. */
const SCALES = [10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02];
/** Distance of the first dimension line from the view, and of each further one [mm of paper]. */
export const FIRST_TIER = 9;
export const NEXT_TIER = 8;
/** Gap between the views' zones. */
const BETWEEN = 8;
/** Room above a view for its title. */
const HEADING = 10;

/** Least and most x and y [mm of the part]. */
export interface Box {
  readonly min: Point;
  readonly max: Point;
}

/** A view in its place on the paper. */
export interface PlacedView {
  readonly view: DrawnView;
  readonly box: Box;
  /** paper place of a point of the view */
  readonly at: (point: Point) => Point;
}

export interface Layout {
  readonly scale: number;
  readonly side: PlacedView;
  readonly end: PlacedView;
}

/** First angle: what is seen from one side stands on the other; third angle: on the same side. */
export type Projection = 'first' | 'third';

/**
 * Finds the largest standard scale at which both views with their dimensions fit beside each other over the title
 * block, and puts them there. The side view has +Z to the left; the end is seen from +Z, so by first angle it stands
 * on the right, by third angle on the left.
 */
export function layOut(side: DrawnView, end: DrawnView, projection: Projection): Layout {
  const zones = projection === 'first' ? [side, end] : [end, side];
  const room = { width: FRAME.right - FRAME.left, height: TITLE.top - FRAME.top };
  const scale = SCALES.find((one) => fits(zones, one, room)) ?? SCALES.at(-1)!;
  const widths = zones.map((view) => zoneOf(view, scale).width);
  const spare = room.width - widths.reduce((sum, width) => sum + width, 0) - BETWEEN;
  let left = FRAME.left + spare / 2;
  const placed = zones.map((view, i) => {
    const one = placeIn(view, scale, left, zones);
    left += widths[i]! + BETWEEN;
    return one;
  });
  const [first, second] = [placed[0]!, placed[1]!];
  return projection === 'first' ? { scale, side: first, end: second } : { scale, side: second, end: first };
}

function fits(views: readonly DrawnView[], scale: number, room: { width: number; height: number }): boolean {
  const zones = views.map((view) => zoneOf(view, scale));
  const width = zones.reduce((sum, zone) => sum + zone.width, 0) + BETWEEN;
  const above = Math.max(...zones.map((zone) => zone.above));
  const below = Math.max(...zones.map((zone) => zone.below));
  return width <= room.width && above + below <= room.height;
}

/** Paper that a view takes with its dimensions; `above` and `below` are counted from the axis. */
function zoneOf(view: DrawnView, scale: number) {
  const box = boxOf(view);
  const tiers = tiersOf(view.sizes);
  const left = room(tiers.left);
  const right = room(tiers.right);
  return {
    left,
    width: left + right + scale * (box.max[0] - box.min[0]),
    above: HEADING + room(tiers.above) + scale * box.max[1],
    below: room(tiers.below) - scale * box.min[1],
  };
}

function room(tiers: number): number {
  return tiers === 0 ? 4 : FIRST_TIER + NEXT_TIER * (tiers - 1) + 3;
}

/** How many dimension lines stand on each side; a leader takes room to the right. */
export function tiersOf(sizes: readonly SizeMark[]): Record<SizeMark['side'], number> {
  const count = (side: SizeMark['side']) => sizes.filter((size) => size.side === side).length;
  const leaders = count('leader');
  return {
    below: count('below'),
    above: count('above'),
    left: count('left'),
    // the shelf of a leader is about as wide as four dimension lines
    right: Math.max(count('right'), leaders > 0 ? 4 : 0),
    leader: leaders,
  };
}

function placeIn(view: DrawnView, scale: number, left: number, views: readonly DrawnView[]): PlacedView {
  const box = boxOf(view);
  const zones = views.map((one) => zoneOf(one, scale));
  const above = Math.max(...zones.map((zone) => zone.above));
  const below = Math.max(...zones.map((zone) => zone.below));
  const spare = TITLE.top - FRAME.top - above - below;
  const axis = FRAME.top + Math.max(0, spare) / 2 + above;
  const origin = left + zoneOf(view, scale).left - scale * box.min[0];
  return { view, box, at: ([x, y]) => [origin + scale * x, axis - scale * y] };
}

/** What a view's lines reach, centre lines aside. */
export function boxOf(view: DrawnView): Box {
  const points = view.strokes.filter((stroke) => stroke.line !== 'centre').flatMap(pointsOf);
  return {
    min: [Math.min(...points.map(([x]) => x)), Math.min(...points.map(([, y]) => y))],
    max: [Math.max(...points.map(([x]) => x)), Math.max(...points.map(([, y]) => y))],
  };
}

function pointsOf(stroke: Stroke): readonly Point[] {
  if (stroke.kind === 'path') return stroke.points;
  const [x, y] = stroke.center;
  return [
    [x - stroke.radius, y - stroke.radius],
    [x + stroke.radius, y + stroke.radius],
  ];
}
