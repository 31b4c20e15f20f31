import { insideBy } from '../../solid/convex.js';
import type { Flange, NutSizes } from './dimensions.js';
import { type BodyPlan, bodyOutline, flangeOutline } from './plan.js';

type Point = readonly [number, number];

/** Fine enough for a distance that a limit hangs on, mm. */
const FINE = 1e-4;

/** Distance from a point to the edge of the plate it stands on (flange, or body where there is none); negative outside. */
export function edgeDistance({ flange, body }: Pick<NutSizes, 'flange' | 'body'>, point: Point): number {
  return flange ? insideFlange(flange, point) : -outsideBody(body, point);
}

function insideFlange(flange: Flange, point: Point): number {
  if (flange.shape !== 'round') return insideBy(flangeOutline(flange, FINE), point);
  const toFlat = flange.flats === undefined ? Infinity : flange.flats / 2 - Math.abs(point[1]);
  return Math.min(flange.size[0] / 2 - Math.hypot(...point), toFlat);
}

/** Distance from a point to the outside of the body; negative inside. */
export function outsideBody(body: BodyPlan, point: Point): number {
  if (body.shape !== 'round') return -insideBy(bodyOutline(body, FINE), point);
  const toFlat = body.flats === undefined ? -Infinity : Math.abs(point[1]) - body.flats / 2;
  return Math.max(Math.hypot(...point) - body.across / 2, toFlat);
}
