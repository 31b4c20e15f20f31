import { type FacetGraph, facing, middleOf, sideOf } from '../facet-graph.js';
import { ROLE } from '../facet-roles.js';
import { FACING, PARALLEL } from './is-wall.js';
import type { Place } from './wall-edges.js';

/** One in so many facets of a thread's roots starts a ray: they all stand alike along a helix. */
const THREAD_SHARE = 6;
/** Normals of facets in one plane agree to within this. */
const FLAT = 1 - 1e-6;
/** Where something thin was found it is looked at more closely: in so many steps along each side of a facet. */
const PLACES = 12;
/** Edges of openings longer than this have facets whose middles are far, mm. */
export const LONG = 1.5;
/** Facets whose normals stand more upright than this bound floors, which are as thick all over. */
const LEVEL = 0.99;
/** Share of the way from a facet's middle to a corner. */
const NEAR_CORNER = 0.95;

/** Threads start rays at their roots and crests only, whose normals stand across the axis, and at some of many. */
export function startsInMiddle(facet: number, mesh: FacetGraph, roles: Uint8Array): boolean {
  if (roles[facet] === ROLE.plain) return !isSecondHalf(facet, mesh, roles);
  return roles[facet] === ROLE.thread && facet % THREAD_SHARE === 0 && Math.abs(mesh.normals[3 * facet + 2]!) < 0.05;
}

/** Whether a facet goes on flat over its longest side in one that is asked already: both halves of a quad say the same. */
function isSecondHalf(facet: number, mesh: FacetGraph, roles: Uint8Array): boolean {
  const side = longestSide(facet, mesh);
  const other = mesh.across[side]!;
  const beyond = Math.trunc(other / 3);
  if (other < 0 || beyond > facet || roles[beyond] !== ROLE.plain) return false;
  return facing(mesh, facet, beyond) > FLAT && longestSide(beyond, mesh) === other;
}

/** A long facet may pass something near its ends, as a lying hole passes a bore. */
export function startsAtEnds(facet: number, mesh: FacetGraph, roles: Uint8Array): boolean {
  if (roles[facet] !== ROLE.plain || Math.abs(mesh.normals[3 * facet + 2]!) > LEVEL) return false;
  return reachOf(mesh, facet) >= 2 * LONG;
}

/** How far a facet's longest side runs across the axis: standing ones pass nothing at their ends that they do not pass before. */
function reachOf(mesh: FacetGraph, facet: number): number {
  const { from, to } = sideOf(mesh, longestSide(facet, mesh));
  const { positions: p } = mesh;
  return Math.hypot(p[3 * from]! - p[3 * to]!, p[3 * from + 1]! - p[3 * to + 1]!);
}

/**
 * A face that leans from the axis and yet bounds a wall: beside it the wall is thinnest at an end, across the axis, as a
 * bearing's lead-in narrows it to its mouth.
 */
export function startsLevel(facet: number, { normals }: FacetGraph, roles: Uint8Array): boolean {
  const nz = normals[3 * facet + 2]!;
  const square = nz * nz;
  return roles[facet] === ROLE.plain && square > 1 - PARALLEL * PARALLEL && square < 1 - FACING * FACING;
}

function longestSide(facet: number, { positions: p, triangles: t }: FacetGraph): number {
  let longest = 3 * facet;
  let most = -1;
  for (let side = 3 * facet; side < 3 * facet + 3; side++) {
    const a = 3 * t[side]!;
    const b = 3 * t[side % 3 === 2 ? side - 2 : side + 1]!;
    const square = (p[a]! - p[b]!) ** 2 + (p[a + 1]! - p[b + 1]!) ** 2 + (p[a + 2]! - p[b + 2]!) ** 2;
    if (square > most) {
      most = square;
      longest = side;
    }
  }
  return longest;
}

/** Places near the corners of a facet. */
export function endsOf(mesh: FacetGraph, facet: number): Place[] {
  const { positions: p, triangles: t } = mesh;
  const [x, y, z] = middleOf(mesh, facet);
  return [0, 1, 2].map((corner): Place => {
    const at = 3 * t[3 * facet + corner]!;
    const near = (from: number, to: number) => from + NEAR_CORNER * (to - from);
    return [near(x, p[at]!), near(y, p[at + 1]!), near(z, p[at + 2]!)];
  });
}

/** Places all over a facet, its corners and sides aside. */
export function placesOn({ positions: p, triangles: t }: FacetGraph, facet: number): Place[] {
  const [a, b, c] = [3 * t[3 * facet]!, 3 * t[3 * facet + 1]!, 3 * t[3 * facet + 2]!];
  const places: Place[] = [];
  for (let i = 0; i < PLACES; i++) {
    for (let j = 0; i + j < PLACES; j++) {
      const [u, v] = [(i + 1 / 3) / PLACES, (j + 1 / 3) / PLACES];
      const at = (axis: number) => p[a + axis]! + u * (p[b + axis]! - p[a + axis]!) + v * (p[c + axis]! - p[a + axis]!);
      places.push([at(0), at(1), at(2)]);
    }
  }
  return places;
}
