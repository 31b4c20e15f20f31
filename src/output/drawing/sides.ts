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
export function sideDistance(side: Side, point: Point): number {
  const ux = side[1][0] - side[0][0];
  const uy = side[1][1] - side[0][1];
  const x = point[0] - side[0][0];
  const y = point[1] - side[0][1];
  const share = Math.min(1, Math.max(0, (x * ux + y * uy) / (ux * ux + uy * uy || 1)));
  return Math.sqrt((x - share * ux) ** 2 + (y - share * uy) ** 2);
}

/** Whether two straight pieces cross. */
export function sidesCross(one: Side, other: Side): boolean {
  if (areApart(one, other, 0) || areApart(one, other, 1)) return false;
  return parts(one, other) && parts(other, one);
}

/** Whether the ends of a piece lie on either side of another one. */
function parts(side: Side, other: Side): boolean {
  return beside(side, other[0]) * beside(side, other[1]) < -1e-9;
}

function beside(side: Side, point: Point): number {
  const a = side[0];
  const b = side[1];
  return (b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0]);
}

function areApart(one: Side, other: Side, axis: 0 | 1): boolean {
  const a = one[0][axis];
  const b = one[1][axis];
  const c = other[0][axis];
  const d = other[1][axis];
  return Math.max(a, b) < Math.min(c, d) || Math.min(a, b) > Math.max(c, d);
}
