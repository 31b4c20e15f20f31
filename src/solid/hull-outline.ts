import { cosd, sind } from './angles.js';
import { type Curve, circleOutline, type Outline, withCurves } from './outline.js';

/** Twice the area of a triangle below which its corners lie on one line, mm². */
const FLAT = 1e-9;

/**
 * Convex hull of outlines: the rubber band around them. Points that lie on one line, to rounding, are left out, so that
 * every corner turns. (A scan by polar angle about one point sorts such points by their rounding, and can turn back.)
 *
 * @param outlines  one or more outlines, together at least three points off one line  [mm]
 * @returns the hull, counter-clockwise, the lowest corner first  [mm]
 * @example hullOutline([[[0, 0], [4, 0], [2, 1], [2, 3]]]) // [[0, 0], [4, 0], [2, 3]]
 */
export function hullOutline(outlines: readonly Outline[]): Outline {
  const sorted = outer(outlines.flat().map(([x, y]): Point => [x + 0, y + 0])).sort(
    (a, b) => a[1] - b[1] || a[0] - b[0],
  );
  const rising = sorted.filter((point, i) => i === 0 || !same(point, sorted[i - 1]!));
  const hull = [...chain(rising), ...chain(rising.toReversed())];
  return outlines.some(({ curves }) => curves) ? withCurves(hull, curvesOf(hull, outlines)) : hull;
}

/** Directions in which the furthest points make an octagon that is mostly within the hull. */
const AROUND: readonly Point[] = [
  [1, 0],
  [1, 1],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [-1, -1],
  [0, -1],
  [1, -1],
];

/** The points that may be corners of the hull: those well within the octagon of the furthest ones are not. */
function outer(points: readonly Point[]): Point[] {
  const corners = AROUND.map(([a, b]) =>
    points.reduce((far, point) => (a * point[0] + b * point[1] > a * far[0] + b * far[1] ? point : far)),
  );
  const sides = corners
    .map((from, i) => [from, corners[(i + 1) % corners.length]!] as const)
    .filter(([from, to]) => !same(from, to));
  return points.filter((point) => sides.some(([from, to]) => turn(from, to, point) <= WITHIN));
}

/** Twice the area of a triangle above which a point lies well within a side, mm². */
const WITHIN = 1e-6;

/** The curves of the sides that the hull took over whole. */
function curvesOf(hull: readonly Point[], outlines: readonly Outline[]): (Curve | undefined)[] {
  const curves = hull.map((): Curve | undefined => undefined);
  const sidesFrom = new Map<number, number[]>();
  for (const [i, [x]] of hull.entries()) sidesFrom.set(x, [...(sidesFrom.get(x) ?? []), i]);
  for (const outline of outlines) {
    for (const [i, from] of outline.entries()) {
      const to = outline[(i + 1) % outline.length]!;
      const side = sidesFrom.get(from[0])?.find((j) => same(hull[j]!, from) && same(hull[(j + 1) % hull.length]!, to));
      if (side !== undefined) curves[side] = outline.curves?.[i];
    }
  }
  return curves.map((curve, i) => curve ?? bridge(curves.at(i - 1), curves[(i + 1) % curves.length]));
}

/** A side from one arc to another is the common tangent of both. */
function bridge(before: Curve | undefined, after: Curve | undefined): Curve | undefined {
  return before !== after && before?.kind === 'arc' && after?.kind === 'arc' ? { kind: 'tangent' } : undefined;
}

function same(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

/** The side of a hull along sorted points, its last point left to the other side. */
function chain(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    while (kept.length > 1 && turn(kept.at(-2)!, kept.at(-1)!, point) <= FLAT) kept.pop();
    kept.push(point);
  }
  kept.pop();
  return kept;
}

function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

type Point = readonly [number, number];

/** A flange with an ear on either side of its middle. */
export interface EarsOptions {
  /** radius of the middle, mm */
  readonly radius: number;
  /** radius about each ear's hole, mm */
  readonly earRadius: number;
  /** distance of the two ears' centres, mm */
  readonly spacing: number;
  /** angle of the first ear from +X, degrees, default 0 */
  readonly turn?: number;
  /** sides of each circle, a multiple of 4 */
  readonly sides: number;
}

/**
 * A flange with two ears: the hull of a middle circle and of the two ear circles, all inscribed.
 *
 * @param ears  radii and spacing  [mm, degrees]
 * @returns corners, counter-clockwise  [mm]
 * @throws InputError  a radius is not above 0
 * @example earsOutline({ radius: 8, earRadius: 4, spacing: 24, sides: 48 })[0] // a corner; it reaches x = ±16
 */
export function earsOutline({ radius, earRadius, spacing, turn = 0, sides }: EarsOptions): Outline {
  const ear = (angle: number) => {
    const center = placed(spacing / 2, angle);
    return circleOutline({ radius: earRadius, sides, center, turn: angle });
  };
  return hullOutline([circleOutline({ radius, sides, turn }), ear(turn), ear(turn + 180)]);
}

function placed(distance: number, angle: number): [number, number] {
  return [distance * cosd(angle), distance * sind(angle)];
}
