import { cosd, sind } from '../../../solid/angles.js';
import { clipped, type HalfPlane, sidesOf } from '../../../solid/convex.js';
import type { Outline } from '../../../solid/outline.js';
import { alongRay } from './ray-section.js';

/** Beyond any part, mm. */
const FAR = 1000;

/** A rectangle [z, r]. */
export function faceBox([z0, z1]: readonly [number, number], [r0, r1]: readonly [number, number]): Outline {
  return [
    [z0, r0],
    [z1, r0],
    [z1, r1],
    [z0, r1],
  ];
}

/**
 * Faces that the half-plane at an angle about the axis cuts from a standing prism.
 * @param outline  seen along the axis                                   [mm]
 * @param angle    of the half-plane from +X                             [degrees]
 * @param ends     heights of the prism                                  [mm]
 * @returns rectangles [z, r], r outwards                                [mm]
 * @example standingFaces([[1, -1], [3, -1], [3, 1], [1, 1]], 0, [2, 5]) // [[[2, 1], [5, 1], [5, 3], [2, 3]]]
 */
export function standingFaces(outline: Outline, angle: number, ends: readonly [number, number]): Outline[] {
  return alongRay(outline, angle).map((span) => faceBox(ends, span));
}

/** A prism that lies along Y. */
export interface LyingPrism {
  /** [x, z] about its centre, convex [mm] */
  readonly outline: Outline;
  /** x and z of the centre */
  readonly at: readonly [number, number];
  /** along Y */
  readonly from: number;
  readonly to: number;
}

/** Faces that the half-plane at an angle about the axis cuts from a prism along Y, as for a standing one. */
export function lyingFaces({ outline, at: [x, z], from, to }: LyingPrism, angle: number): Outline[] {
  const [c, s] = [cosd(angle), sind(angle)];
  const sides = sidesOf(outline).map(([a, b, reach]): HalfPlane => [b, a * c, reach + a * x + b * z]);
  const limits: HalfPlane[] = [...sides, [0, s, to], [0, -s, -from]];
  const whole = faceBox([-FAR, FAR], [0, FAR]);
  const face = limits.reduce<Outline>((left, side) => (left.length === 0 ? left : limited(left, side)), whole);
  return face.length === 0 ? [] : [face];
}

/** A half-plane across which nothing changes holds all or nothing. */
function limited(outline: Outline, [a, b, c]: HalfPlane): Outline {
  const length = Math.hypot(a, b);
  if (length < 1e-12) return c >= 0 ? outline : [];
  return clipped(outline, [a / length, b / length, c / length]);
}
