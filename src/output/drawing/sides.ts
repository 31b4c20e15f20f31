import type { Point } from '../../parts/part-views.js';
import type { Ink } from './ink.js';

/** Chords that arcs are looked at in, unless said otherwise [degrees]. */
const CHORD = 5;

/** A straight piece of a line on the paper. */
export type Side = readonly [Point, Point];

/** The straight pieces that a line or the edge of a filled shape is made of, or the chords of an arc. */
export function sidesOf(ink: Ink, chord = CHORD): Side[] {
  if (ink.kind === 'line' || ink.kind === 'fill') {
    const points = ink.kind === 'fill' || ink.closed ? [...ink.points, ink.points[0]!] : ink.points;
    return points.slice(1).map((to, i) => [points[i]!, to] as const);
  }
  if (ink.kind !== 'arc') return [];
  const { center, radius, from, to } = ink;
  const steps = Math.max(1, Math.ceil((to - from) / chord));
  const points = Array.from({ length: steps + 1 }, (_, i): Point => {
    const angle = ((from + ((to - from) * i) / steps) * Math.PI) / 180;
    return [center[0] + radius * Math.cos(angle), center[1] - radius * Math.sin(angle)];
  });
  return points.slice(1).map((end, i) => [points[i]!, end] as const);
}

/** How far a point lies off a straight piece. */
export function sideDistance([[x0, y0], [x1, y1]]: Side, [x, y]: Point): number {
  const [ux, uy] = [x1 - x0, y1 - y0];
  const share = Math.min(1, Math.max(0, ((x - x0) * ux + (y - y0) * uy) / (ux * ux + uy * uy || 1)));
  return Math.hypot(x - x0 - share * ux, y - y0 - share * uy);
}

/** Whether two straight pieces cross. */
export function sidesCross(one: Side, other: Side): boolean {
  if (areApart(one, other, 0) || areApart(one, other, 1)) return false;
  const beside = ([a, b]: Side, [x, y]: Point) => (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]);
  const parts = (side: Side, [from, to]: Side) => beside(side, from) * beside(side, to) < -1e-9;
  return parts(one, other) && parts(other, one);
}

function areApart([a, b]: Side, [c, d]: Side, axis: 0 | 1): boolean {
  return (
    (a[axis] < c[axis] && a[axis] < d[axis] && b[axis] < c[axis] && b[axis] < d[axis]) ||
    (a[axis] > c[axis] && a[axis] > d[axis] && b[axis] > c[axis] && b[axis] > d[axis])
  );
}
