import type { Point, SizeMark } from '../../parts/part-views.js';
import type { PlacedView } from './placed-view.js';
import { type Side, sideDistance } from './sides.js';
import { FIGURE, OVER_LINE, sizeWidth } from './size-text.js';
import type { Box } from './text-box.js';

/** Distance of shelves from the view, and from each other [mm of paper]. */
const CLEAR = 5;
export const PITCH = 6;
/** Steps in which a shelf's height is tried, how far above the view, and how far above the lowest dimension line [mm of paper]. */
const STEP = 3;
const OVER = 8;
const BELOW = 3;
/** How much farther they may go where no way is free otherwise [mm of paper]. */
const FAR = 15;
/** Directions in which a line with a knee leaves its circle, and how far off it the knee is [degrees, mm of paper]. */
const TURN = 30;
const KNEES = [5, 12];
/** Free room around a shelf with its text [mm of paper]. */
const ROOM = 0.7;
/** Samples of a circle, and how many of them lie on lines where it is drawn. */
const [SAMPLES, DRAWN] = [72, 6];

/** A way of a leader, counted from the part's origin [mm of paper, y downwards]. */
export interface Way {
  /** from the tip, maybe over a knee, to where the shelf starts */
  readonly points: readonly Point[];
  /** the shelf runs on to the right, or to the left */
  readonly runs: 1 | -1;
  /** how long the shelf is */
  readonly width: number;
  /** the circle that it touches; none where it leads to a point */
  readonly circle?: Circle;
}

/** How freely leaders run: straight, with a knee, or to shelves that take paper of their own as well. */
export type Room = 'straight' | 'bent' | 'far';

/** A circle on the paper. */
export interface Circle {
  readonly center: Point;
  readonly radius: number;
}

/** Paper that a shelf takes with its text. */
export function shelfBox({ points, runs, width }: Way): Box {
  const [x, y] = points.at(-1)!;
  const [low, high] = runs === 1 ? [x, x + width] : [x - width, x];
  return { min: [low - ROOM, y - OVER_LINE - FIGURE - ROOM], max: [high + ROOM, y + ROOM] };
}

/**
 * Ways that a leader may take.
 *
 * @param placed the view, its origin at that of the paper
 * @param how    what is drawn of the view, how free they are, and how many leaders there are
 */
export function waysOf(
  mark: SizeMark,
  placed: PlacedView,
  how: { readonly drawn: readonly Side[]; readonly room: Room; readonly count: number },
): Way[] {
  const width = sizeWidth(mark) + 1.8;
  const shelves = shelvesOf(placed, how.count, how.room === 'far' ? FAR : 0);
  const targets = targetsOf(mark, placed, how.drawn);
  const led = (lines: (target: Target, shelf: Point) => Point[][]) =>
    shelves.flatMap(({ at, runs }) =>
      targets.flatMap((target) => lines(target, at).map((points) => ({ points, runs, width, ...about(target) }))),
    );
  const straight = led(straightLines);
  // an arc may be drawn only where no shelf is in line with it
  return how.room !== 'straight' || straight.length === 0 ? [...straight, ...led(bentLines)] : straight;
}

/** What a leader leads to: a point, or where a circle is drawn. */
type Target =
  | { readonly tip: Point }
  | (Circle & {
      readonly isDrawn: (tip: Point) => boolean;
      /** sampled directions from the middle in which the circle is drawn [degrees] */
      readonly drawnAt: readonly number[];
    });

function about(target: Target): { circle?: Circle } {
  return 'tip' in target ? {} : { circle: { center: target.center, radius: target.radius } };
}

/** The circles of a size; its points where no circle is drawn about its middles. */
function targetsOf(
  { from, to, sign = '', alike }: SizeMark,
  { scale, at }: PlacedView,
  drawn: readonly Side[],
): Target[] {
  const radius = scale * Math.hypot(to[0] - from[0], to[1] - from[1]);
  // drawn circles are chords at worst, of lying holes those of a polygon of 24 sides
  const near = 0.02 * scale + 0.005 * radius;
  const isRound = sign.includes('⌀') || alike !== undefined;
  const circles = [from, ...(alike ?? [])].flatMap((middle): Target[] => {
    const center = at(middle);
    const sides = drawn.filter((side) => isChord(side, { center, radius }, near));
    const isDrawn = (point: Point) => sides.some((side) => sideDistance(side, point) < near);
    const drawnAt = turns(360 / SAMPLES).filter((turn) => isDrawn(onCircle(center, radius, turn)));
    const isCircle = isRound && radius > near && drawnAt.length >= DRAWN;
    return isCircle ? [{ center, radius, isDrawn, drawnAt }] : [];
  });
  if (circles.length > 0) return circles;
  const tips = [to, ...(alike ?? []).map(([x, y]): Point => [x + to[0] - from[0], y + to[1] - from[1]])];
  return tips.map((tip) => ({ tip: at(tip) }));
}

/** Whether a side is a chord of a circle: both of its ends lie on it. */
function isChord(side: Side, { center, radius }: Circle, near: number): boolean {
  return side.every(([x, y]) => Math.abs(Math.hypot(x - center[0], y - center[1]) - radius) < near);
}

/** The line from a target to a shelf; that to a circle aims at its middle. */
function straightLines(target: Target, shelf: Point): Point[][] {
  if ('tip' in target) return [[target.tip, shelf]];
  const { center, radius, isDrawn } = target;
  const away = Math.hypot(shelf[0] - center[0], shelf[1] - center[1]);
  const tip = between(center, shelf, radius / away);
  return away > radius + PITCH && isDrawn(tip) ? [[tip, shelf]] : [];
}

/** Lines that leave a circle from its middle and turn to a shelf at a knee. */
function bentLines(target: Target, shelf: Point): Point[][] {
  const { center, radius } = 'tip' in target ? { center: target.tip, radius: 0 } : target;
  return startsOf(target).flatMap((turn) =>
    KNEES.map((reach) => [onCircle(center, radius, turn), onCircle(center, radius + reach, turn), shelf]),
  );
}

/** Directions in which a line with a knee may start: few of them, or every sampled one of an arc too short for these. */
function startsOf(target: Target): readonly number[] {
  if ('tip' in target) return turns(TURN);
  const few = target.drawnAt.filter((turn) => turn % TURN === 0);
  return few.length > 0 ? few : target.drawnAt;
}

/** Directions all around [degrees]. */
function turns(step: number): number[] {
  return Array.from({ length: 360 / step }, (_, i) => step * i);
}

/** Where shelves may start: on both sides, past dimension lines, or next to the view where these leave room. */
function shelvesOf({ box, scale, beside }: PlacedView, count: number, far: number): { at: Point; runs: 1 | -1 }[] {
  // beside the title, and beside what stands below the view, so that leaders take no paper of their own
  const top = -scale * box.max[1] - OVER - far;
  const bottom = -scale * box.min[1] + Math.max(1, beside.below - BELOW) + far;
  const rows = Math.max(Math.floor((bottom - top) / STEP), (count * PITCH) / STEP);
  const heights = Array.from({ length: rows + 1 }, (_, i) => top + STEP * i);
  const columns = (
    [
      [1, box.max[0], beside.right],
      [-1, box.min[0], beside.left],
    ] as const
  ).flatMap(([runs, edge, taken]) =>
    [...new Set([CLEAR, Math.max(CLEAR, taken + 1)])].map((off) => ({ runs, x: scale * edge + runs * off })),
  );
  return columns.flatMap(({ runs, x }) => heights.map((y) => ({ at: [x, y] as const, runs })));
}

function onCircle([x, y]: Point, radius: number, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
}

function between(from: Point, to: Point, share: number): Point {
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}
