import type { DrawnView, Point, Stroke } from '../../parts/part-views.js';
import { PLANE_ARROW, PLANE_LETTER, PLANE_REACH } from './cutting-planes.js';
import { FIGURE, OVER_LINE, sizeWidth } from './size-text.js';
import type { Box } from './text-box.js';
import { textWidth } from './text-width.js';
import { type Straight, tiersOn } from './tiers.js';

/** Distance of the first dimension line from the view, and of each further one [mm of paper]. */
const FIRST_TIER = 9;
export const NEXT_TIER = 8;
/** Height of a view's title [mm of paper]. */
export const TITLE_HEIGHT = 3.5;
/** How far above the view a riser's text starts, and free room around texts. */
export const RISER_CLEAR = 3;
/** Least distance of two risers. */
export const RISER_PITCH = 4;
export const MARGIN = 2;

/** What stands around a view before its leaders are known [mm of paper]. */
export interface Bands {
  /** least and most x and y of the view [mm of the part] */
  readonly box: Box;
  /** distance of the first dimension line on each side */
  readonly start: Readonly<Record<Straight, number>>;
  /** taken by dimension lines on each side, the title not */
  readonly beside: Readonly<Record<Straight, number>>;
  /** taken on each side by whatever stands there, the title not */
  readonly past: Readonly<Record<Straight, number>>;
}

/** What dimension lines, risers, letters and cutting planes take around a view. */
export function bandsOf(view: DrawnView, scale: number): Bands {
  const box = boxOf(view);
  const { sizes } = view;
  const of = (side: Straight) => tiersOn(sizes, side, scale);
  const tiers = { below: of('below'), above: of('above'), left: of('left'), right: of('right') };
  const past = (side: Straight, axis: 0 | 1) => ({
    low: Math.max(0, ...tiers[side].map(({ line, text }) => scale * box.min[axis] - Math.min(line[0], text[0]))),
    high: Math.max(0, ...tiers[side].map(({ line, text }) => Math.max(line[1], text[1]) - scale * box.max[axis])),
  });
  const [below, above] = [past('below', 0), past('above', 0)];
  const [toLeft, toRight] = [past('left', 1), past('right', 1)];
  // where lying and standing figures both reach past a corner, the lying ones stand farther off
  const clear = (lying: typeof below, end: 'low' | 'high') =>
    Math.max(
      FIRST_TIER,
      ...[lying.low > 0 ? toLeft[end] : 0, lying.high > 0 ? toRight[end] : 0].map((reach) => reach + FIGURE + MARGIN),
    );
  const planes = planeRoom(view, scale, box);
  // below and on the right figures stand between the line and the view
  const pastPlane = (reach: number) => (reach > 0 ? reach + FIGURE + OVER_LINE + 0.5 : 0);
  const start = {
    below: Math.max(clear(below, 'low'), pastPlane(planes.below)),
    above: Math.max(clear(above, 'high'), planes.above),
    left: Math.max(FIRST_TIER, planes.left),
    right: Math.max(FIRST_TIER, pastPlane(planes.right)),
  };
  const room = (side: Straight) =>
    tiers[side].length === 0
      ? Math.max(4, planes[side])
      : start[side] + NEXT_TIER * Math.max(...tiers[side].map(({ tier }) => tier)) + 3;
  const along = { low: MARGIN + Math.max(below.low, above.low), high: MARGIN + Math.max(below.high, above.high) };
  const up = { low: MARGIN + Math.max(toLeft.low, toRight.low), high: MARGIN + Math.max(toLeft.high, toRight.high) };
  const risers = sizes.filter(({ side }) => side === 'riser');
  const beside = {
    below: room('below'),
    above: Math.max(
      room('above'),
      up.high,
      ...risers.map((mark) => RISER_CLEAR + sizeWidth(mark) + MARGIN),
      ...letterTops(view, scale, box),
    ),
    left: room('left'),
    right: room('right'),
  };
  const across = scale * (box.max[0] - box.min[0]);
  const title = (textWidth(view.title, TITLE_HEIGHT) - across) / 2;
  const crowd = risers.length === 0 ? 0 : (RISER_PITCH * risers.length - across) / 2 + MARGIN;
  return {
    box,
    start,
    beside,
    past: {
      below: Math.max(beside.below, up.low),
      above: beside.above,
      left: Math.max(beside.left, along.low, title, crowd),
      right: Math.max(beside.right, along.high, title, crowd),
    },
  };
}

/** Paper that letters take whose point lies above the view, as that of a cut-out that runs out of the edge. */
function letterTops({ letters }: DrawnView, scale: number, { max }: Box): number[] {
  return letters.flatMap(({ at: [, y] }) => (y > max[1] ? [scale * (y - max[1]) + FIGURE + MARGIN] : []));
}

/** Paper that the ends of cutting planes take beyond the box of a view, with arrow and letter. */
function planeRoom({ planes = [] }: DrawnView, scale: number, box: Box): Record<Straight, number> {
  const past = (axis: 0 | 1, way: 1 | -1) => {
    const edge = way === 1 ? box.max[axis] : box.min[axis];
    const over = planes.map(
      ({ at, away, look }) =>
        way * (scale * (at[axis] - edge) + PLANE_REACH * away[axis]) +
        Math.max(PLANE_LETTER, -PLANE_ARROW * way * look[axis]),
    );
    return Math.max(0, ...over);
  };
  return { left: past(0, -1), right: past(0, 1), below: past(1, -1), above: past(1, 1) };
}

/** Whether a point lies in a box. */
export function isWithin(point: Point, { min, max }: Box): boolean {
  return ([0, 1] as const).every((axis) => point[axis] >= min[axis] && point[axis] <= max[axis]);
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
