import type { FacetGraph } from '../facet-graph.js';
import type { Ray } from '../ray-caster.js';
import type { Edge, Place } from './wall-edges.js';

/** A ray leaves an edge across it whose direction is off by no more than this, as a sine. */
const ACROSS = 0.1;

/** Against a facet's normal. */
export function inwards({ normals }: FacetGraph, [x, y, z]: Place, facet: number): Ray {
  return [x, y, z, 0 - normals[3 * facet]!, 0 - normals[3 * facet + 1]!, 0 - normals[3 * facet + 2]!];
}

/** Against a facet's normal, and level. */
export function inwardsLevel({ normals }: FacetGraph, [x, y, z]: Place, facet: number): Ray {
  const [nx, ny] = [normals[3 * facet]!, normals[3 * facet + 1]!];
  const length = Math.hypot(nx, ny);
  return [x, y, z, 0 - nx / length, 0 - ny / length, 0];
}

/** Midway between the two normals of an edge. */
export function inwardsBetween({ normals }: FacetGraph, [x, y, z]: Place, [one, other]: Edge['facets']): Ray {
  const sum = [0, 1, 2].map((axis) => normals[3 * one + axis]! + normals[3 * other + axis]!) as [
    number,
    number,
    number,
  ];
  const length = Math.hypot(...sum) || 1;
  return [x, y, z, 0 - sum[0] / length, 0 - sum[1] / length, 0 - sum[2] / length];
}

/** The ray that meets a face at right angles. */
export function straightTo({ normals }: FacetGraph, [x, y, z]: Place, facet: number): Ray {
  return [x, y, z, normals[3 * facet]!, normals[3 * facet + 1]!, normals[3 * facet + 2]!];
}

/** Whether a ray leaves an edge across it, between the ways against both normals: the edge is then what comes nearest. */
export function isBetween([, , , u, v, w]: Ray, { normals: n }: FacetGraph, [one, other]: Edge['facets']): boolean {
  const [a, b] = [one, other].map((facet) => [n[3 * facet]!, n[3 * facet + 1]!, n[3 * facet + 2]!] as const) as [
    Place,
    Place,
  ];
  const apart = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const along = u * (a[1] * b[2] - a[2] * b[1]) + v * (a[2] * b[0] - a[0] * b[2]) + w * (a[0] * b[1] - a[1] * b[0]);
  const isAcross = Math.abs(along) < ACROSS * Math.sqrt(1 - apart * apart);
  return isAcross && [a, b].every(([x, y, z]) => 0 - (u * x + v * y + w * z) > apart);
}
