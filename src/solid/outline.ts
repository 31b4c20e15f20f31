import { requirePositive, requireRange, requireWhole } from '../units/require.js';
import { cosd, sind, unitAt, unitCorners } from './angles.js';

/** What sides of an outline stand for: an arc of a circle, the tangent of two, another smooth curve. One object, one curve. */
export type Curve =
  | {
      readonly kind: 'arc';
      readonly center: readonly [number, number];
      /** of the circle meant, mm */
      readonly radius: number;
      /** true: the sides touch the circle; false: the corners lie on it */
      readonly circumscribed: boolean;
    }
  /** the straight side is meant to touch the arcs at both its ends */
  | { readonly kind: 'tangent' }
  | { readonly kind: 'free' };

/**
 * A closed polygon, counter-clockwise seen from +Z, the last point not repeated, mm. Where sides stand for curves,
 * `curves` says which: one entry a side, side i running from corner i to the next.
 */
export type Outline = readonly (readonly [number, number])[] & { readonly curves?: readonly (Curve | undefined)[] };

/**
 * Corners with the curves that their sides stand for; without any, the bare corners.
 *
 * @param corners  counter-clockwise            [mm]
 * @param curves   one entry a side
 */
export function withCurves(
  corners: readonly (readonly [number, number])[],
  curves: readonly (Curve | undefined)[],
): Outline {
  return curves.every((curve) => curve === undefined) ? corners : Object.assign([...corners], { curves });
}

/**
 * An outline turned about the axis, then shifted.
 *
 * @param outline  the outline              [mm]
 * @param degrees  turn, counter-clockwise  [degrees]
 * @param by       shift, default none      [mm]
 * @returns the outline, its curves with it [mm]
 * @example turnedOutline([[1, 0], [0, 1], [-1, 0]], 90) // [[0, 1], [-1, 0], [0, -1]]
 */
export function turnedOutline(outline: Outline, degrees: number, by: readonly [number, number] = [0, 0]): Outline {
  const [c, s] = [cosd(degrees), sind(degrees)];
  return movedOutline(outline, ([x, y]) => [c * x - s * y + by[0], s * x + c * y + by[1]]);
}

/** An outline with every corner moved by a motion that keeps lengths and does not turn the plane over. */
export function movedOutline(
  outline: Outline,
  motion: (point: readonly [number, number]) => readonly [number, number],
): Outline {
  const corners = outline.map(motion);
  if (!outline.curves) return corners;
  const made = new Map<Curve, Curve>();
  const moved = (curve: Curve | undefined): Curve | undefined => {
    if (curve === undefined) return undefined;
    const known = made.get(curve) ?? (curve.kind === 'arc' ? { ...curve, center: motion(curve.center) } : { ...curve });
    made.set(curve, known);
    return known;
  };
  return withCurves(corners, outline.curves.map(moved));
}

/** An outline moved by a motion that turns the plane over; its corners run on counter-clockwise. */
export function mirroredOutline(
  outline: Outline,
  motion: (point: readonly [number, number]) => readonly [number, number],
): Outline {
  const moved = movedOutline(outline, motion);
  const count = moved.length;
  const { curves } = moved;
  const corners = [...moved].reverse();
  return curves
    ? withCurves(
        corners,
        corners.map((_, i) => curves[(2 * count - 2 - i) % count]),
      )
    : corners;
}

/** How a circle is drawn as a regular polygon. */
export interface CircleOptions {
  /** of the circle meant, mm, above 0 */
  readonly radius: number;
  /** corners, at least 3 */
  readonly sides: number;
  /** true: flats touch the circle (bores); false, the default: corners lie on it (outsides) */
  readonly circumscribed?: boolean;
  /** default [0, 0], mm */
  readonly center?: readonly [number, number];
  /** angle of corner 0 from +X, degrees, default 0 */
  readonly turn?: number;
}

/**
 * Corners of the regular polygon that stands for a circle.
 *
 *     n = π / acos(1 − e/r), rounded up to a multiple of 4, at least 12
 *
 * A multiple of 4 puts corners on both axes, so that bounds equal the printed size.
 *
 * @param radius      r  radius of the circle                         [mm]  above 0
 * @param chordError  e  greatest distance of chord and circle        [mm]  above 0
 * @returns n, 12 or more; 12 where e is not below r                  [-]
 * @throws InputError  a value is not above 0
 * @source geometry: sagitta of a chord
 * @example sidesFor(4, 0.01) // 48
 */
export function sidesFor(radius: number, chordError: number): number {
  requirePositive('radius', radius);
  requirePositive('chordError', chordError);
  if (chordError >= radius) return LEAST_ROUND;
  return Math.max(LEAST_ROUND, 4 * Math.ceil(Math.PI / Math.acos(1 - chordError / radius) / 4));
}

/**
 * Distance of a regular polygon's corners from its centre.
 *
 *     R = r / cos(180°/n) circumscribed, R = r inscribed
 *
 * @param radius         r  radius of the circle meant                [mm]
 * @param sides          n  corners                                   [-]
 * @param circumscribed     whether the flats touch the circle
 * @returns R                                                         [mm]
 * @example cornerRadius(1, 6, true) // 1.1547
 */
export function cornerRadius(radius: number, sides: number, circumscribed: boolean): number {
  return circumscribed ? radius / cosd(180 / sides) : radius;
}

/**
 * A circle as a regular polygon.
 *
 * @param circle  radius, sides and place  [mm, degrees]
 * @returns corners, counter-clockwise, corner 0 at `turn`  [mm]
 * @throws InputError  radius is not above 0, or fewer than 3 sides
 * @example circleOutline({ radius: 2, sides: 4 }) // [[2, 0], [0, 2], [-2, 0], [0, -2]]
 */
export function circleOutline(circle: CircleOptions): Outline {
  const { radius, sides, circumscribed = false, center = [0, 0] } = circle;
  const corners = circleCorners(circle);
  if (sides < LEAST_ROUND) return corners;
  const arc: Curve = { kind: 'arc', center, radius, circumscribed };
  return withCurves(
    corners,
    Array.from({ length: sides }, () => arc),
  );
}

/** The corners of {@link circleOutline} alone, for who asks where it runs and not what it means. */
export function circleCorners({
  radius,
  sides,
  circumscribed = false,
  center = [0, 0],
  turn = 0,
}: CircleOptions): Outline {
  requirePositive('radius', radius);
  requireWhole('sides', sides, 3, 100_000);
  const reach = cornerRadius(radius, sides, circumscribed);
  const [c, s] = [cosd(turn), sind(turn)];
  return unitCorners(sides).map(
    ([x, y]) => [center[0] + reach * (c * x - s * y), center[1] + reach * (s * x + c * y)] as const,
  );
}

/** A polygon of fewer sides is meant as a polygon, not as a circle. */
export const LEAST_ROUND = 12;

/** A rectangle about a centre, its corners sharp or rounded. */
export interface RectangleOptions {
  /** along x and y, mm, above 0 */
  readonly size: readonly [number, number];
  /** default [0, 0], mm */
  readonly center?: readonly [number, number];
  /** corner radius, mm, default 0; below half the shorter side */
  readonly radius?: number;
  /** sides of a whole circle at the corners, a multiple of 4, default 48 */
  readonly sides?: number;
}

/**
 * A rectangle, its corners rounded by inscribed arcs that start and end on its sides.
 *
 * @param rectangle  size, corner radius and place  [mm]
 * @returns corners, counter-clockwise  [mm]
 * @throws InputError  a size is not above 0, or the radius is not below half the shorter side
 * @example rectangleOutline({ size: [4, 2] }) // [[2, 1], [-2, 1], [-2, -1], [2, -1]]
 */
export function rectangleOutline({ size, center = [0, 0], radius = 0, sides = 48 }: RectangleOptions): Outline {
  requirePositive('size', size[0]);
  requirePositive('size', size[1]);
  requireRange('radius', radius, 0, Math.min(...size) / 2);
  const [x, y] = [size[0] / 2 - radius, size[1] / 2 - radius];
  const points: (readonly [number, number])[] = [];
  const curves: (Curve | undefined)[] = [];
  const steps = radius === 0 ? 0 : Math.ceil(sides / 4);
  for (const [quarter, [sx, sy]] of QUARTERS.entries()) {
    const corner = [center[0] + sx * x, center[1] + sy * y] as const;
    const arc: Curve = { kind: 'arc', center: corner, radius, circumscribed: false };
    for (let i = 0; i <= steps; i++) {
      const [c, s] = radius === 0 ? [0, 0] : unitAt(quarter * steps + i, 4 * steps);
      const next = [center[0] + sx * x + radius * c, center[1] + sy * y + radius * s] as const;
      const last = points.at(-1);
      if (last === undefined || last[0] !== next[0] || last[1] !== next[1]) points.push(next);
      // the side that starts here; that of an arc's end is straight, or the next arc's where the corner is repeated
      curves[points.length - 1] = i < steps ? arc : undefined;
    }
  }
  const [first, last] = [points[0]!, points.at(-1)!];
  if (first[0] === last[0] && first[1] === last[1]) points.pop();
  return withCurves(points, curves.slice(0, points.length));
}

const QUARTERS = [
  [1, 1],
  [-1, 1],
  [-1, -1],
  [1, -1],
] as const;

/**
 * A regular hexagon by its width across flats.
 *
 *     corner distance = flats / √3
 *
 * @param hexagon.acrossFlats  distance of opposite sides               [mm]  above 0
 * @param hexagon.turn         angle of a corner from +X, default 0     [degrees]
 * @param hexagon.center       default [0, 0]                           [mm]
 * @returns six corners, counter-clockwise                              [mm]
 * @throws InputError  acrossFlats is not above 0
 * @example hexagonOutline({ acrossFlats: 13 })[0] // [7.5056, 0]
 */
export function hexagonOutline(hexagon: {
  readonly acrossFlats: number;
  readonly turn?: number;
  readonly center?: readonly [number, number];
}): Outline {
  const { acrossFlats, ...place } = hexagon;
  return circleOutline({ radius: acrossFlats / 2, sides: 6, circumscribed: true, ...place });
}

/**
 * Area of a simple polygon.
 *
 *     A = ½·Σ (x_i·y_{i+1} − x_{i+1}·y_i)
 *
 * @param outline  corners  [mm]
 * @returns A, positive counter-clockwise  [mm²]
 * @source geometry: shoelace formula
 * @example polygonArea([[0, 0], [3, 0], [0, 2]]) // 3
 */
export function polygonArea(outline: Outline): number {
  let twice = 0;
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    twice += outline[j]![0] * outline[i]![1] - outline[i]![0] * outline[j]![1];
  }
  return twice / 2;
}
