import { type HalfPlane, sidesOf } from '../../solid/convex.js';
import type { Outline } from '../../solid/outline.js';
import { turned } from '../common/hole-pattern.js';

type Point = readonly [number, number];

/** A round thing seen along the axis: a hole, a pocket, a head. */
export interface Disc {
  readonly at: Point;
  readonly radius: number;
}

/** A distance that changes as the moving pattern turns about the axis, in degrees. */
export interface TurnTerm {
  /** mm at this turn; negative where the two overlap */
  readonly gap: (turn: number) => number;
  /** a bound that the gap nowhere exceeds between two turns, from the smaller to the larger */
  readonly most: (from: number, to: number) => number;
}

const RADIANS = Math.PI / 180;

/** Wall between a moving disc and a still one. Its distance grows with the angle between them, up to half a turn. */
export function discToDisc(moving: Disc, still: Disc): TurnTerm {
  const [a, b] = [Math.hypot(...moving.at), Math.hypot(...still.at)];
  const squares = a * a + b * b;
  const twice = 2 * a * b;
  const radii = moving.radius + still.radius;
  return turning(between(moving.at, still.at), (angle) => {
    return Math.sqrt(Math.max(0, squares - twice * Math.cos(angle * RADIANS))) - radii;
  });
}

/** Wall between a moving disc and a straight side; largest where the disc is opposite the side. */
export function discToSide(moving: Disc, [a, b, c]: HalfPlane): TurnTerm {
  const reach = Math.hypot(...moving.at);
  return turning(between(moving.at, [a, b]), (angle) => c - reach * Math.cos(angle * RADIANS) - moving.radius);
}

/** Walls between a moving disc and the inside of a convex outline. */
export function discInConvex(moving: Disc, outline: Outline): TurnTerm[] {
  return sidesOf(outline).map((side) => discToSide(moving, side));
}

/** Gap between a moving disc and anything whose distance from a point is known. */
export function discToAny(moving: Disc, distance: (point: Point) => number): TurnTerm {
  const slope = Math.hypot(...moving.at) * RADIANS;
  return sloped(slope, (turn) => distance(turned(moving.at, turn)) - moving.radius);
}

/** Gap between a moving thing, whose distance from a point is known at no turn, and a still disc. */
export function anyToDisc(distance: (point: Point) => number, still: Disc): TurnTerm {
  const slope = Math.hypot(...still.at) * RADIANS;
  return sloped(slope, (turn) => distance(turned(still.at, -turn)) - still.radius);
}

/** Angle from the second point to the first, degrees. */
function between(first: Point, second: Point): number {
  return (Math.atan2(first[1], first[0]) - Math.atan2(second[1], second[0])) / RADIANS;
}

/** A term of one angle that rises up to half a turn and falls after it: between two turns it is largest at an end. */
function turning(start: number, at: (angle: number) => number): TurnTerm {
  const top = at(180);
  return {
    gap: (turn) => at(start + turn),
    most: (from, to) => {
      const opposite = Math.floor((start + to - 180) / 360) * 360 + 180;
      return opposite >= start + from ? top : Math.max(at(start + from), at(start + to));
    },
  };
}

/** A term that changes by at most `slope` a degree. */
function sloped(slope: number, gap: (turn: number) => number): TurnTerm {
  return { gap, most: (from, to) => (gap(from) + gap(to) + slope * (to - from)) / 2 };
}
