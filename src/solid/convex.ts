import { cosd, sind } from './angles.js';
import { type Curve, type Outline, withCurves } from './outline.js';

/** Points nearer than this are one point, mm. */
const TOGETHER = 1e-9;

/** The half-plane a·x + b·y ≤ c; (a, b) is a unit vector that points out of it. */
export type HalfPlane = readonly [a: number, b: number, c: number];

/**
 * The part of a convex outline inside a half-plane.
 * @returns corners, counter-clockwise; empty when nothing is left [mm]
 */
export function clipped(outline: Outline, halfPlane: HalfPlane): Outline {
  const sides: number[] = [];
  const kept = clippedCorners(outline, halfPlane, sides);
  const { curves } = outline;
  if (!curves) return kept;
  return withCurves(
    kept,
    sides.slice(0, kept.length).map((side): Curve | undefined => (side < 0 ? undefined : curves[side])),
  );
}

/** @param sides  takes for each side of the result the side of the outline that it lies on, −1 for the cut */
function clippedCorners(
  outline: Outline,
  [a, b, c]: HalfPlane,
  sides?: number[],
): readonly (readonly [number, number])[] {
  const depth = outline.map(([x, y]) => a * x + b * y - c);
  const kept: (readonly [number, number])[] = [];
  for (let i = 0; i < outline.length; i++) {
    const j = (i + 1) % outline.length;
    const p = outline[i]!;
    const q = outline[j]!;
    const dp = depth[i]!;
    const dq = depth[j]!;
    if (dp <= TOGETHER) {
      kept.push(p);
      sides?.push(dp > -TOGETHER && dq > TOGETHER ? -1 : i);
    }
    if ((dp < -TOGETHER && dq > TOGETHER) || (dp > TOGETHER && dq < -TOGETHER)) {
      const share = dp / (dp - dq);
      kept.push([p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])]);
      sides?.push(dp < 0 ? -1 : i);
    }
  }
  return kept.length < 3 ? [] : kept;
}

/**
 * Whether an outline turns left at every corner.
 * @example turnsLeft([[0, 0], [2, 0], [2, 2], [1, 0.5]]) // false
 */
export function turnsLeft(outline: Outline): boolean {
  return outline.every(([x, y], i) => {
    const before = outline.at(i - 1)!;
    const after = outline[(i + 1) % outline.length]!;
    return (x - before[0]) * (after[1] - y) - (y - before[1]) * (after[0] - x) > 0;
  });
}

/** The outward half-planes of a convex outline's sides, in order. */
export function sidesOf(outline: Outline): HalfPlane[] {
  return outline.map(([x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(nextX - x, nextY - y);
    const a = (nextY - y) / length;
    const b = (x - nextX) / length;
    return [a, b, a * x + b * y] as const;
  });
}

/** What two convex outlines have in common; empty when they do not meet. */
export function common(a: Outline, b: Outline): Outline {
  return sidesOf(b).reduce((left, side) => (left.length === 0 ? left : clippedCorners(left, side)), a);
}

/**
 * Least distance of a point to the sides of a convex outline [mm]; negative outside.
 * @example insideBy([[0, 0], [4, 0], [4, 2], [0, 2]], [1, 1]) // 1
 */
export function insideBy(outline: Outline, point: readonly [number, number]): number {
  return insideSides(sidesOf(outline), point);
}

/** The same for sides already worked out, where many points are asked about. */
export function insideSides(sides: readonly HalfPlane[], [x, y]: readonly [number, number]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const side of sides) {
    const room = side[2] - (side[0] * x + side[1] * y);
    if (room < least) least = room;
  }
  return least;
}

/** Least distance by which one convex outline lies inside another [mm]; negative where it sticks out. */
export function rimAround(inner: Outline, outer: Outline): number {
  const sides = sidesOf(outer);
  return Math.min(...inner.map((point) => insideSides(sides, point)));
}

/**
 * Distance from the origin to a convex outline around it, along an angle from +X in degrees [mm].
 * @example reachOf([[1, 1], [-1, 1], [-1, -1], [1, -1]], 90) // 1
 */
export function reachOf(outline: Outline, angle: number): number {
  const [c, s] = [cosd(angle), sind(angle)];
  let reach = Number.POSITIVE_INFINITY;
  for (const side of sidesOf(outline)) {
    const towards = side[0] * c + side[1] * s;
    if (towards > TOGETHER) reach = Math.min(reach, side[2] / towards);
  }
  return reach;
}

/** Least and largest x and y of an outline [mm]. */
export function outlineBounds(outline: Outline): { readonly min: [number, number]; readonly max: [number, number] } {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
}
