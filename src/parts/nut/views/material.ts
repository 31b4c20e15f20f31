import { reachOf } from '../../../solid/convex.js';
import type { Outline } from '../../../solid/outline.js';
import { standingFaces } from '../../common/drawn/cut-face.js';
import { flatArea } from '../../common/drawn/flat-area.js';
import { polar } from '../../common/hole-pattern.js';
import type { Point } from '../../part-views.js';
import type { NutSizes } from '../dimensions.js';
import type { NutInSight } from './in-sight.js';
import type { Threaded } from './member.js';

/** Body and flange in a direction from the axis outwards, before anything is cut, as [z, r]. */
export function profileOf(nut: NutInSight, angle: number): Outline {
  const { sizes, bottom, top, plate } = nut;
  const { relief, fillet, flange } = sizes;
  const body = reachOf(nut.body, angle);
  const end: Point[] = [
    [top - relief, body],
    [top, body - relief],
  ];
  const start: Point[] = [
    [bottom, body - relief],
    [bottom + relief, body],
  ];
  const axis: Point[] = [
    [top, 0],
    [bottom, 0],
  ];
  if (!flange || !plate) return [...start, ...end, ...axis];
  const rim = reachOf(plate, angle);
  const round = Array.from({ length: 9 }, (_, i): Point => {
    const [c, s] = polar(fillet, 11.25 * i);
    return [flange.thickness + fillet - c, body + fillet - s];
  });
  return [
    ...(flange.offset > 0 ? [...start, [0, body] as const] : []),
    [0, rim - relief],
    [relief, rim],
    [flange.thickness, rim],
    ...(fillet > 0 ? round : [[flange.thickness, body] as const]),
    ...end,
    ...axis,
  ];
}

/** A thread by its minor diameter, and the cones at its ends. */
export function threadFace({ thread, leadIn }: NutSizes, { bottom, top }: Threaded): Outline {
  const cone = thread.major / 2 + leadIn;
  const depth = cone - thread.minor / 2;
  return [
    [bottom, 0],
    [top, 0],
    [top, cone],
    [top - depth, thread.minor / 2],
    [bottom + depth, thread.minor / 2],
    [bottom, cone],
  ];
}

/** Openings of the holes that a direction meets, each with its pocket. */
export function holeFaces({ holes }: NutInSight, angle: number): Outline[] {
  return holes.flatMap(({ outline, ends, sunk }) =>
    flatArea([...standingFaces(outline, angle, ends), ...(sunk ? standingFaces(sunk.outline, angle, sunk.ends) : [])]),
  );
}
