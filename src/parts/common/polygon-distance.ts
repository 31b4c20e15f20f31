import type { Outline } from '../../solid/outline.js';

type Point = readonly [number, number];

/**
 * Distance of a point to the edge of any simple polygon [mm]; negative outside.
 * @example insideSimple([[0, 0], [4, 0], [4, 2], [0, 2]], [1, 1]) // 1
 */
export function insideSimple(outline: Outline, point: Point): number {
  let nearest = Infinity;
  let inside = false;
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    const [a, b] = [outline[j]!, outline[i]!];
    nearest = Math.min(nearest, toSegment(point, a, b));
    const crosses = a[1] > point[1] !== b[1] > point[1];
    if (crosses && point[0] < a[0] + ((point[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
  }
  return inside ? nearest : -nearest;
}

function toSegment(point: Point, a: Point, b: Point): number {
  const [x, y] = nearestOn(point, a, b);
  return Math.hypot(point[0] - x, point[1] - y);
}

/** The place of a segment that is nearest to a point. */
function nearestOn([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): Point {
  const [ux, uy] = [bx - ax, by - ay];
  const squared = ux * ux + uy * uy;
  const share = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / squared));
  return [ax + share * ux, ay + share * uy];
}

/**
 * The nearest places of two segments that do not cross, one on each [mm].
 * @example nearestPlaces([[0, 0], [4, 0]], [[1, 2], [9, 6]]) // [[1, 0], [1, 2]]
 */
export function nearestPlaces(
  [a, b]: readonly [Point, Point],
  [c, d]: readonly [Point, Point],
): readonly [Point, Point] {
  const pairs: readonly (readonly [Point, Point])[] = [
    [a, nearestOn(a, c, d)],
    [b, nearestOn(b, c, d)],
    [nearestOn(c, a, b), c],
    [nearestOn(d, a, b), d],
  ];
  const apart = ([[x, y], [u, v]]: readonly [Point, Point]) => Math.hypot(u - x, v - y);
  return pairs.reduce((least, next) => (apart(next) < apart(least) ? next : least));
}

/**
 * Distance of a point to the edge of a rectangle with round corners about the origin [mm]; negative outside.
 * @example insideRounded([20, 10], 2, [9, 0]) // 1
 */
export function insideRounded(size: readonly [number, number], corner: number, [x, y]: Point): number {
  const [dx, dy] = [Math.abs(x) - size[0] / 2 + corner, Math.abs(y) - size[1] / 2 + corner];
  const outside = Math.hypot(Math.max(dx, 0), Math.max(dy, 0));
  return corner - outside - Math.min(Math.max(dx, dy), 0);
}

/** Whether no two sides of a closed polygon cross or touch, neighbours aside. */
export function isSimple(outline: Outline): boolean {
  const count = outline.length;
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      if (j === i + 1 || (i === 0 && j === count - 1)) continue;
      if (meet(outline[i]!, outline[(i + 1) % count]!, outline[j]!, outline[(j + 1) % count]!)) return false;
    }
  }
  return outline.every((point, i) => toSegment(point, outline[(i + 1) % count]!, outline[(i + 1) % count]!) > 1e-6);
}

function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (crossing(a, b, c, d)) return true;
  return Math.min(toSegment(a, c, d), toSegment(b, c, d), toSegment(c, a, b), toSegment(d, a, b)) < 1e-6;
}

function crossing(a: Point, b: Point, c: Point, d: Point): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

function side(a: Point, b: Point, c: Point): number {
  return Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
}
