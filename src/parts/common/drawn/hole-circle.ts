import { outlineBounds } from '../../../solid/convex.js';
import type { Outline } from '../../../solid/outline.js';
import type { Point, Stroke } from '../../part-views.js';
import { arc, ring } from './strokes.js';

/** How far a piece of the circle reaches to either side of its hole [degrees]. */
const REACH = 16;

/** Direction of a point from the axis [degrees]. */
export function angleOf([x, y]: Point): number {
  return (Math.atan2(y, x) * 180) / Math.PI;
}

/** The circle that holes stand on; where the body does not hold all of it, a piece about each hole. */
export function circleSeen(centres: readonly Point[], radius: number, outline: Outline): Stroke[] {
  const { min, max } = outlineBounds(outline);
  if (Math.min(-min[0], -min[1], ...max) > radius) return [ring('centre', [0, 0], radius)];
  return centres.map((centre) => arc('centre', [0, 0], radius, angleOf(centre) - REACH, angleOf(centre) + REACH));
}

/** Radius of the circle about the axis on which holes stand, before it is turned into a printed one; none where they do not. */
export function circleThrough(centres: readonly Point[]): number | undefined {
  const radius = Math.hypot(...centres[0]!);
  return radius > 0 && centres.every((at) => Math.abs(Math.hypot(...at) - radius) < 1e-6) ? radius : undefined;
}
