import { clipped, type HalfPlane } from '../../solid/convex.js';
import {
  type Curve,
  mirroredOutline,
  movedOutline,
  type Outline,
  rectangleOutline,
  withCurves,
} from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';

/** Sides of a lying hole; a flat stands at every 15°, so at 45° too. */
const SIDES = 24;

/**
 * A lying hole that prints without support: round below, sides closing at 45° to a flat roof that touches the circle.
 * @returns [sideways, up] about the hole's centre, convex, counter-clockwise [mm]
 */
export function roofedOutline(radius: number): Outline {
  const planes = Array.from({ length: SIDES }, (_, i): HalfPlane => {
    const angle = (2 * Math.PI * i) / SIDES;
    return [Math.cos(angle), Math.sin(angle), radius];
  }).filter(([, up]) => up < Math.SQRT1_2 + 1e-6);
  const square = rectangleOutline({ size: [4 * radius, 4 * radius] });
  const outline = [...planes, [0, 1, radius] as const].reduce<Outline>(clipped, square);
  const arc: Curve = { kind: 'arc', center: [0, 0], radius, circumscribed: true };
  // one surface, so that no edge along the hole is drawn
  const roof: Curve = { kind: 'free' };
  // the sides at 45° run on to the roof, which lies over the widest place of the arc
  const isRound = (i: number) =>
    [outline[i]!, outline[(i + 1) % outline.length]!].every(([, y]) => y < radius * Math.SQRT1_2 + 1e-6);
  return withCurves(
    outline,
    outline.map((_, i) => (isRound(i) ? arc : roof)),
  );
}

/** Half the width of a lying hole at a height over its centre; the outline is symmetric [mm]. */
export function halfWidthAt(outline: Outline, up: number): number {
  let widest = 0;
  for (let i = 0; i < outline.length; i++) {
    const [[x0, y0], [x1, y1]] = [outline[i]!, outline[(i + 1) % outline.length]!];
    if (y0 === y1 || (up - y0) * (up - y1) > 0) continue;
    widest = Math.max(widest, x0 + ((up - y0) / (y1 - y0)) * (x1 - x0));
  }
  return widest;
}

/**
 * A lying prism: `outline` [x, z] about its centre, along Y from one place to another.
 * @param at  x and z of the centre [mm]
 */
export function alongY(outline: Outline, at: readonly [number, number], from: number, to: number): Shape {
  const laid = mirroredOutline(outline, ([x, z]) => [-(z + at[1]), -(x + at[0])]);
  return { kind: 'moved', tilt: 90, turn: 90, shape: { kind: 'prism', outlines: [laid], from, to } };
}

/**
 * A lying prism: `outline` [y, z] about its centre, along X from one place to another.
 * @param at  y and z of the centre [mm]
 */
export function alongX(outline: Outline, at: readonly [number, number], from: number, to: number): Shape {
  const laid = movedOutline(outline, ([y, z]) => [-(z + at[1]), y + at[0]]);
  return { kind: 'moved', tilt: 90, shape: { kind: 'prism', outlines: [laid], from, to } };
}
