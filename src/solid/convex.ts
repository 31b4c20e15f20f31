import type { Outline } from './outline.js';

/** Points nearer than this are one point, mm. */
const TOGETHER = 1e-9;

/** The half-plane a·x + b·y ≤ c; (a, b) is a unit vector that points out of it. */
export type HalfPlane = readonly [a: number, b: number, c: number];

/**
 * The part of a convex outline inside a half-plane.
 * @returns corners, counter-clockwise; empty when nothing is left [mm]
 */
export function clipped(outline: Outline, [a, b, c]: HalfPlane): Outline {
  const depth = outline.map(([x, y]) => a * x + b * y - c);
  const kept: (readonly [number, number])[] = [];
  for (let i = 0; i < outline.length; i++) {
    const j = (i + 1) % outline.length;
    const [p, q] = [outline[i]!, outline[j]!];
    const [dp, dq] = [depth[i]!, depth[j]!];
    if (dp <= TOGETHER) kept.push(p);
    if ((dp < -TOGETHER && dq > TOGETHER) || (dp > TOGETHER && dq < -TOGETHER)) {
      const share = dp / (dp - dq);
      kept.push([p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])]);
    }
  }
  return kept.length < 3 ? [] : kept;
}

/** The outward half-planes of a convex outline's sides, in order. */
export function sidesOf(outline: Outline): HalfPlane[] {
  return outline.map(([x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(nextX - x, nextY - y);
    const [a, b] = [(nextY - y) / length, (x - nextX) / length];
    return [a, b, a * x + b * y] as const;
  });
}

/** What two convex outlines have in common; empty when they do not meet. */
export function common(a: Outline, b: Outline): Outline {
  return sidesOf(b).reduce((left, side) => (left.length === 0 ? left : clipped(left, side)), a);
}

/**
 * Least distance of a point to the sides of a convex outline [mm]; negative outside.
 * @example insideBy([[0, 0], [4, 0], [4, 2], [0, 2]], [1, 1]) // 1
 */
export function insideBy(outline: Outline, [x, y]: readonly [number, number]): number {
  return Math.min(...sidesOf(outline).map(([a, b, c]) => c - (a * x + b * y)));
}

/** Least distance by which one convex outline lies inside another [mm]; negative where it sticks out. */
export function rimAround(inner: Outline, outer: Outline): number {
  return Math.min(...inner.map((point) => insideBy(outer, point)));
}

/** Least and largest x and y of an outline [mm]. */
export function outlineBounds(outline: Outline): { readonly min: [number, number]; readonly max: [number, number] } {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
}
