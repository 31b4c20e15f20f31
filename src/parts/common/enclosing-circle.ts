type Point = readonly [number, number];

/** A circle in the plane, mm. */
export interface Circle {
  readonly center: Point;
  readonly radius: number;
}

const ROUNDING = 1e-10;

/**
 * The smallest circle around all points: each point that lies outside the circle so far must lie on the next one.
 *
 * @param points  at least one [mm]
 * @returns centre and radius [mm]
 * @source geometry: incremental smallest enclosing circle
 * @example enclosingCircle([[0, 0], [4, 0], [2, 1]]).radius // 2
 */
export function enclosingCircle(points: readonly Point[]): Circle {
  let circle: Circle = { center: points[0]!, radius: 0 };
  for (let i = 1; i < points.length; i++) {
    if (holds(circle, points[i]!)) continue;
    circle = { center: points[i]!, radius: 0 };
    for (let j = 0; j < i; j++) {
      if (holds(circle, points[j]!)) continue;
      circle = across(points[i]!, points[j]!);
      for (let k = 0; k < j; k++) if (!holds(circle, points[k]!)) circle = through(points[i]!, points[j]!, points[k]!);
    }
  }
  return circle;
}

function holds({ center, radius }: Circle, [x, y]: Point): boolean {
  return Math.hypot(x - center[0], y - center[1]) <= radius + ROUNDING;
}

function across([ax, ay]: Point, [bx, by]: Point): Circle {
  return { center: [(ax + bx) / 2, (ay + by) / 2], radius: Math.hypot(ax - bx, ay - by) / 2 };
}

function through(a: Point, b: Point, c: Point): Circle {
  const [bx, by, cx, cy] = [b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]];
  const twice = 2 * (bx * cy - by * cx);
  if (Math.abs(twice) < 1e-14)
    return [across(a, b), across(a, c), across(b, c)].reduce((x, y) => (y.radius > x.radius ? y : x));
  const [b2, c2] = [bx * bx + by * by, cx * cx + cy * cy];
  const [x, y] = [(cy * b2 - by * c2) / twice, (bx * c2 - cx * b2) / twice];
  return { center: [a[0] + x, a[1] + y], radius: Math.hypot(x, y) };
}
