import { type FacetGraph, facing } from '../facet-graph.js';
import { ROLE } from '../facet-roles.js';
import type { Ray } from '../ray-caster.js';
import { type Edge, SMOOTH } from './wall-edges.js';

/** What a ray found, from one facet to another. */
export interface Candidate {
  readonly ray: Ray;
  readonly from: number;
  readonly to: number;
  readonly thickness: number;
}

/** Cosine of the angle within which both faces of a wall look apart: others meet in an edge. */
export const FACING = Math.cos((40 * Math.PI) / 180);
/** Faces that look apart to within this are taken for parallel: they meet nowhere near. */
export const PARALLEL = Math.cos((4 * Math.PI) / 180);
/** An edge where two faces meet is looked for this much farther than two flat ones would meet. */
const FARTHER = 1.5;

/**
 * Whether what a ray passed is a wall, and no edge.
 *
 * @param sharp edges at which the solid stands out
 */
export function isWall(one: Candidate, mesh: FacetGraph, roles: Uint8Array, sharp: readonly Edge[]): boolean {
  return isBounded(one, mesh, roles) && !meetsInEdge(one, mesh, sharp);
}

/** Its far face looks the way the ray goes, and neither face breaks an edge. */
function isBounded({ ray, from, to }: Candidate, { normals }: FacetGraph, roles: Uint8Array): boolean {
  const along = ray[3] * normals[3 * to]! + ray[4] * normals[3 * to + 1]! + ray[5] * normals[3 * to + 2]!;
  if (along < FACING) return false;
  const [leaves, meets] = [roles[from]!, roles[to]!];
  if (meets === ROLE.bevel || meets === ROLE.mark) return false;
  if (leaves === ROLE.thread && meets === ROLE.thread) return false;
  return (leaves !== ROLE.thread && meets !== ROLE.thread) || Math.abs(ray[5]) < 0.5;
}

/**
 * Whether the face that a ray leaves and the face that it meets come together in an edge: two flat faces at an angle α
 * that are t apart do so t/tan α on.
 */
function meetsInEdge({ ray, from, to, thickness }: Candidate, mesh: FacetGraph, sharp: readonly Edge[]): boolean {
  const apart = 0 - facing(mesh, from, to);
  if (apart > PARALLEL) return false;
  const angle = Math.acos(Math.max(0.02, apart));
  const far = FARTHER * (thickness / Math.tan(angle)) + thickness;
  const [x, y, z] = ray;
  return sharp.some(({ at, reach, facets: [one, other] }) => {
    if (Math.hypot(at[0] - x, at[1] - y, at[2] - z) > far + reach) return false;
    const goesOn = (a: number, b: number) => facing(mesh, a, from) > SMOOTH && facing(mesh, b, to) > SMOOTH;
    return goesOn(one, other) || goesOn(other, one);
  });
}
