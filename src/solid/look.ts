import { cosd, sind } from './angles.js';
import type { Outline } from './outline.js';
import type { Shape } from './recipe.js';
import { dot, type Vector } from './surfaces.js';

/** How a solid is looked at: what lies to the right and upwards on paper, and what comes towards the viewer; unit vectors. */
export interface Look {
  readonly right: Vector;
  readonly up: Vector;
  readonly toward: Vector;
}

/** From +Z, +X to the right; or from −Z, +X to the left. */
export function alongAxis(from: 1 | -1): Look {
  return { right: [from, 0, 0], up: [0, 1, 0], toward: [0, 0, from] };
}

/**
 * Across the axis, which lies with +Z to the left, the direction `upwards` above it.
 *
 * @param upwards  from +X, counter-clockwise seen from +Z  [degrees]
 * @param side     1: that direction is up; −1: it is down, as in the lower half of a section
 */
export function acrossAxis(upwards: number, side: 1 | -1 = 1): Look {
  const [c, s] = [cosd(upwards), sind(upwards)];
  return { right: [0, 0, -1], up: [side * c, side * s, 0], toward: [side * s, -side * c, 0] };
}

/** Place on the paper [x, y], and how near to the viewer. */
export function seenAt({ right, up, toward }: Look, point: Vector): Vector {
  return [dot(right, point), dot(up, point), dot(toward, point)];
}

/** Names of the features that walls of a cut belong to: what is hatched, and what is not there at all. */
export const CUT = 'cut';
export const GHOST = 'ghost';

/** Beyond any part, mm. */
const FAR = 2000;

/**
 * The part of a solid behind the half-plane from the axis in a direction, on that side of the axis.
 *
 * @param shape  the solid                                                          [mm]
 * @param angle  of the half-plane from +X                                          [degrees]
 * @param side   1 for the upper half of a section, seen as {@link acrossAxis} with that side does; −1 for the lower one
 */
export function halfBehind(shape: Shape, angle: number, side: 1 | -1): Shape {
  const behind: Outline = side === 1 ? box([-FAR, FAR], [0, FAR]) : box([-FAR, FAR], [-FAR, 0]);
  return {
    kind: 'intersection',
    of: [shape, wall(CUT, behind, angle), wall(GHOST, box([0, FAR], [-FAR, FAR]), angle)],
  };
}

/** The part of a solid behind the whole plane through the axis, seen as {@link acrossAxis} does. */
export function wholeBehind(shape: Shape, angle: number): Shape {
  return { kind: 'intersection', of: [shape, wall(CUT, box([-FAR, FAR], [0, FAR]), angle)] };
}

/** The part of a solid below a height, seen from +Z. */
export function below(shape: Shape, height: number): Shape {
  const slab: Shape = { kind: 'prism', outlines: [box([-FAR, FAR], [-FAR, FAR])], from: -FAR, to: height };
  return { kind: 'intersection', of: [shape, { kind: 'feature', name: CUT, shape: slab }] };
}

function wall(name: string, outline: Outline, turn: number): Shape {
  const shape: Shape = { kind: 'prism', outlines: [outline], from: -FAR, to: FAR };
  return { kind: 'feature', name, shape: { kind: 'moved', turn, shape } };
}

function box([x0, x1]: readonly [number, number], [y0, y1]: readonly [number, number]): Outline {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}
