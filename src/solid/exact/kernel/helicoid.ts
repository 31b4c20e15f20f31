import type { Point } from '../meant-outline.js';
import type { OcShape, Session } from './session.js';
import { pointAt } from './wires.js';

/** A stretch of a helicoid between two helices of one lead. */
export interface Helicoid {
  /** of its two helices */
  readonly radii: readonly [number, number];
  /** their heights at angle 0 */
  readonly z0: readonly [number, number];
  readonly lead: number;
  /** angles that it spans, radians */
  readonly angles: readonly [number, number];
}

/**
 * A helicoid as a surface in the angle along it and 0 to 1 across it. Along the helix it is a spline of degree 5 with
 * poles on a circle scaled so that it runs through the helix, across it is straight; so z is linear in both parameters
 * and a flat end is a straight line in them.
 */
export function helicoidSurface(session: Session, { radii, angles, z0, lead }: Helicoid, side: 1 | -1): OcShape {
  const { oc, keep } = session;
  const [first, last] = angles;
  const spans = Math.max(1, Math.ceil((last - first) / (Math.PI / 8)));
  const step = (last - first) / spans;
  const scale = 120 / (66 + 52 * Math.cos(step) + 2 * Math.cos(2 * step));
  const count = spans + 5;
  const poles = keep(new oc.NCollection_Array2_gp_Pnt(1, count, 1, 2));
  for (let i = 0; i < count; i++) {
    // a pole stands at the mean of its five inner knots
    const angle = first + (i - 2) * step;
    for (const row of [0, 1] as const) {
      const r = radii[row] * scale;
      const point: Point = [r * Math.cos(angle), side * r * Math.sin(angle)];
      poles.SetValue(i + 1, row + 1, pointAt(session, point, z0[row] + (lead * angle) / (2 * Math.PI)));
    }
  }
  const along = knotsOf(
    session,
    Array.from({ length: spans + 11 }, (_, i) => first + (i - 5) * step),
    1,
  );
  const across = knotsOf(session, [0, 1], 2);
  const surface = keep(
    new oc.Geom_BSplineSurface(poles, along.knots, across.knots, along.mults, across.mults, 5, 1, false, false),
  );
  surface.Segment(first, last, 0, 1, 1e-9, 1e-9);
  return surface;
}

/** Knots of one direction, all as many times over. */
function knotsOf({ oc, keep }: Session, values: readonly number[], times: number) {
  const knots = keep(new oc.NCollection_Array1_double(1, values.length));
  const mults = keep(new oc.NCollection_Array1_int(1, values.length));
  for (const [i, value] of values.entries()) {
    knots.SetValue(i + 1, value);
    mults.SetValue(i + 1, times);
  }
  return { knots, mults };
}
