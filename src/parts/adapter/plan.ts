import { clipped, type HalfPlane, insideBy, insideSides, sidesOf } from '../../solid/convex.js';
import { hullOutline } from '../../solid/hull-outline.js';
import {
  type CircleOptions,
  type Curve,
  circleCorners,
  circleOutline,
  type Outline,
  rectangleOutline,
  sidesFor,
  withCurves,
} from '../../solid/outline.js';
import { onceFor } from '../../units/once.js';
import { type HolePlaces, polar, turned } from '../common/hole-pattern.js';
import type { JointHole, Pocket } from '../common/joints.js';
import { insideRounded, insideSimple } from '../common/polygon-distance.js';
import { type PrintSizes, TRUE_SIZES } from '../common/print-sizes.js';
import type { Roof } from '../common/roof.js';
import type { Disc } from './turn-terms.js';

export type Point = readonly [number, number];

/** The plate seen along the axis before flats and cut-outs, finished sizes. */
export type OutlinePlan =
  | { readonly shape: 'round'; readonly diameter: number; readonly center: Point }
  | {
      readonly shape: 'rectangular';
      readonly size: readonly [number, number];
      readonly corner: number;
      readonly center: Point;
    }
  | { readonly shape: 'hull'; readonly discs: readonly Disc[] }
  | { readonly shape: 'polygon'; readonly corners: Outline };

/** A straight cut across the plate. */
export interface Flat {
  readonly angle: number;
  readonly distance: number;
}

/** Room cut out for a neighbour on the machine. */
export interface Cutout {
  readonly at: Point;
  readonly turn: number;
  readonly diameter?: number;
  readonly size?: readonly [number, number];
}

/** A round sink or a raised ring around the axis of nut or carriage. */
export interface Step {
  readonly diameter: number;
  readonly depth: number;
  readonly center: Point;
}
export interface Rim {
  readonly outer: number;
  readonly inner: number;
  readonly height: number;
  readonly center: Point;
}

/** Whether a ring is full down to the bore, which goes through it. */
export function isSolidRim(rim: Rim, bore: number): boolean {
  return rim.inner <= bore;
}

/** Least wall of a ring: around its own opening, or around a bore that may stand off its middle. */
export function rimThickness(rim: Rim, bore: number): number {
  return isSolidRim(rim, bore) ? (rim.outer - bore) / 2 - Math.hypot(...rim.center) : (rim.outer - rim.inner) / 2;
}

/** A raised bar beside a floating nut. */
export interface Key {
  readonly center: Point;
  readonly size: readonly [number, number];
  readonly turn: number;
  readonly height: number;
}

/** The holes of one pattern, all alike. Heights from the carriage's face. */
export interface PatternHoles extends HolePlaces {
  readonly hole: JointHole;
  /** face of the pocket, or of the mouth of an insert or thread: `low` is the carriage's */
  readonly opens: 'low' | 'high';
  readonly from: number;
  readonly to: number;
  readonly pocket?: Pocket;
  /** how the pocket is roofed where it opens on the bed; none where too little stands over it */
  readonly roof?: Roof['kind'];
  /** depth from the mouth where the hole does not go through */
  readonly blind?: number;
}

/** A pocket in the middle that holds a second nut. */
export interface CatchPocket {
  readonly shape: 'hexagon' | 'square';
  readonly acrossFlats: number;
  readonly depth: number;
  readonly turn: number;
}

/** Everything that is drawn, finished sizes; the carriage's face is z = 0, the outer face z = thickness. */
export interface PlateSizes {
  readonly outline: OutlinePlan;
  readonly flats: readonly Flat[];
  readonly cutouts: readonly Cutout[];
  readonly thickness: number;
  readonly relief: number;
  readonly bore: number;
  readonly outerStep?: Step;
  readonly innerStep?: Step;
  readonly rim?: Rim;
  readonly keys: readonly Key[];
  readonly catchPocket?: CatchPocket;
  readonly nutHoles?: PatternHoles;
  readonly carriageHoles: PatternHoles;
}

/** Fine enough for a distance that a limit hangs on, mm. */
const FINE = 4e-3;

/** The outline as it is drawn, flats cut. A drawn outside follows its arcs to within the chord error, inscribed. */
export function plateOutline(
  { outline, flats }: Pick<PlateSizes, 'outline' | 'flats'>,
  { outside, across }: Pick<PrintSizes, 'outside' | 'across'> = TRUE_SIZES,
  chordError = FINE,
): Outline {
  const sides = flats.map(({ angle, distance }): HalfPlane => [...polar(1, angle), outside(2 * distance) / 2]);
  return sides.reduce<Outline>(clipped, drawn(outline, { outside, across }, chordError));
}

function drawn(
  plan: OutlinePlan,
  { outside, across }: Pick<PrintSizes, 'outside' | 'across'>,
  chordError: number,
  circle: (options: CircleOptions) => Outline = circleOutline,
): Outline {
  const moved = ([x, y]: Point): Point => [across(x), across(y)];
  switch (plan.shape) {
    case 'round': {
      const radius = outside(plan.diameter) / 2;
      return circleOutline({ radius, sides: sidesFor(radius, chordError), center: moved(plan.center) });
    }
    case 'rectangular': {
      const [size, radius] = [[outside(plan.size[0]), outside(plan.size[1])] as const, across(plan.corner)];
      const sides = radius > 0 ? sidesFor(radius, chordError) : 4;
      return rectangleOutline({ size, radius, sides, center: moved(plan.center) });
    }
    case 'hull':
      return withoutTinySides(
        hullOutline(
          plan.discs.map(({ at, radius }) => {
            const reach = outside(2 * radius) / 2;
            return circle({ radius: reach, sides: sidesFor(reach, chordError), center: moved(at) });
          }),
        ),
      );
    case 'polygon':
      return plan.corners.map(moved);
  }
}

/** Corners nearer to the one before than this are the same corner, mm. */
const SAME_CORNER = 1e-3;

/** Arcs of two discs that nearly coincide leave sides too short to have a direction. */
function withoutTinySides(outline: Outline): Outline {
  const kept: Point[] = [];
  const curves: (Curve | undefined)[] = [];
  for (const [i, point] of outline.entries()) {
    const last = kept.at(-1);
    if (!last || Math.hypot(point[0] - last[0], point[1] - last[1]) > SAME_CORNER) kept.push(point);
    // of the sides that a corner is left with, the last one is whole
    curves[kept.length - 1] = outline.curves?.[i];
  }
  const [first, last] = [kept[0]!, kept.at(-1)!];
  if (Math.hypot(first[0] - last[0], first[1] - last[1]) <= SAME_CORNER) kept.pop();
  return withCurves(kept, curves.slice(0, kept.length));
}

/** Whether the outline has no corner that points inwards. */
export function isConvex(outline: Outline): boolean {
  return outline.every((point) => insideBy(outline, point) > -1e-6);
}

/** A cut-out as it is drawn, circumscribed. */
export function cutoutOutline(
  { at, turn, diameter, size }: Cutout,
  { inside, across }: Pick<PrintSizes, 'inside' | 'across'> = TRUE_SIZES,
  chordError = FINE,
): Outline {
  const center: Point = [across(at[0]), across(at[1])];
  if (diameter !== undefined) {
    const radius = inside(diameter) / 2;
    return circleOutline({ radius, sides: sidesFor(radius, chordError), circumscribed: true, center });
  }
  const corners = rectangleOutline({ size: [inside(size![0]), inside(size![1])] });
  return corners.map((corner) => {
    const [x, y] = turned(corner, turn);
    return [center[0] + x, center[1] + y];
  });
}

/** Distance of a point to a cut-out; negative inside it. */
export function toCutout(cutout: Cutout, [x, y]: Point): number {
  const [dx, dy] = [x - cutout.at[0], y - cutout.at[1]];
  if (cutout.diameter !== undefined) return Math.hypot(dx, dy) - cutout.diameter / 2;
  return -insideRounded(cutout.size!, 0, turned([dx, dy], -cutout.turn));
}

/** Distance of a point to the edge of the plate, flats included, cut-outs not; negative outside. */
export function insideEdge({ outline, flats }: Pick<PlateSizes, 'outline' | 'flats'>): (point: Point) => number {
  const shape = insidePlan(outline);
  const sides = flats.map(({ angle, distance }): HalfPlane => [...polar(1, angle), distance]);
  return (point) => Math.min(shape(point), ...sides.map(([a, b, c]) => c - a * point[0] - b * point[1]));
}

function insidePlan(plan: OutlinePlan): (point: Point) => number {
  switch (plan.shape) {
    case 'round':
      return ([x, y]) => plan.diameter / 2 - Math.hypot(x - plan.center[0], y - plan.center[1]);
    case 'rectangular':
      return ([x, y]) => insideRounded(plan.size, plan.corner, [x - plan.center[0], y - plan.center[1]]);
    case 'polygon':
      return (point) => insideSimple(plan.corners, point);
    case 'hull':
      return (point) => insideSides(hullSides(plan), point);
  }
}

/** Walls, edges and clocking all ask about one hull. */
const hullSides = onceFor((plan: OutlinePlan) => sidesOf(drawn(plan, TRUE_SIZES, FINE, circleCorners)));

/** Corners of a key as it is drawn. */
export function keyOutline(
  { center, size, turn }: Key,
  { outside, across }: Pick<PrintSizes, 'outside' | 'across'> = TRUE_SIZES,
): Outline {
  const [x, y] = [across(center[0]), across(center[1])];
  return rectangleOutline({ size: [outside(size[0]), outside(size[1])] }).map((corner): Point => {
    const [u, v] = turned(corner, turn);
    return [x + u, y + v];
  });
}
