import { type FacetGraph, middleOf } from './facet-graph.js';
import { ROLE } from './facet-roles.js';
import type { Ray, RayCaster, RayHit } from './ray-caster.js';
import { type Candidate, FACING, isWall } from './walls/is-wall.js';
import { endsOf, LONG, placesOn, startsAtEnds, startsInMiddle, startsLevel } from './walls/ray-starts.js';
import { wallEdges } from './walls/wall-edges.js';
import { inwards, inwardsBetween, inwardsLevel, isBetween, straightTo } from './walls/wall-rays.js';

/** The thinnest place of a body. */
export interface ThinPlace {
  /** along the ray, mm */
  readonly thickness: number;
  /** where the ray starts, on the surface, mm */
  readonly at: readonly [number, number, number];
}

/** Facets are asked so far apart from one another. */
const STRIDE = 61;
/** It is followed as long as it becomes thinner by this, mm. */
const NEARLY = 1e-3;
/** A ray passes by what is nearer than this: the facet it starts from and its neighbours, mm. */
const OWN = 1e-4;

/**
 * The least thickness of a body's walls, by rays through the solid: from the middle of each facet, and from the middle
 * of each edge that stands into the solid, against the normals beside it and straight to the face beyond; from the ends
 * of faces that lean, level; then closely about the thinnest place. What a ray finds is a wall where the face it leaves
 * and the face it meets look apart; where those two meet in an edge near by, it is that edge and no wall. Facets of
 * bevels and marks bound no wall; a thread does across its axis only, by its roots: it may end on a face as thin as it
 * likes.
 *
 * @param mesh    a closed mesh                                    [mm]
 * @param roles   of its facets                                    [-]
 * @param caster  of the same mesh
 * @returns the thinnest place; undefined where no ray finds a wall  [mm]
 */
export function thinnestWall(mesh: FacetGraph, roles: Uint8Array, caster: RayCaster): ThinPlace | undefined {
  const { sharp, hollow } = wallEdges(mesh, roles);
  let thin: Candidate | undefined;
  const take = (ray: Ray, from: number, { facet, distance }: RayHit): void => {
    const one = { ray, from, to: facet, thickness: distance };
    if (isWall(one, mesh, roles, sharp)) thin = one;
  };
  const cast: Cast = (ray, from) => {
    const hit = caster.first(ray, OWN, thin?.thickness);
    if (hit) take(ray, from, hit);
  };
  castFromFacets(mesh, roles, cast);
  for (const { at, reach, facets } of hollow) {
    // beside short edges the middles of the facets are near enough
    if (reach > LONG / 2) for (const facet of facets) cast(inwards(mesh, at, facet), facet);
    const middle = inwardsBetween(mesh, at, facets);
    // what it meets may be thin itself, or no farther than its slant makes it
    const met = caster.first(middle, OWN, thin && thin.thickness / FACING);
    if (met && met.distance < (thin?.thickness ?? Number.POSITIVE_INFINITY)) take(middle, facets[0], met);
    const straight = met && straightTo(mesh, at, met.facet);
    if (straight && isBetween(straight, mesh, facets)) cast(straight, facets[0]);
  }
  for (let before = Infinity; thin && thin.thickness < before - NEARLY; ) {
    before = thin.thickness;
    for (const facet of about(thin, mesh, roles))
      for (const at of placesOn(mesh, facet)) cast(inwards(mesh, at, facet), facet);
  }
  return thin && { thickness: thin.thickness, at: [thin.ray[0], thin.ray[1], thin.ray[2]] };
}

/** Follows a ray from a facet. */
type Cast = (ray: Ray, from: number) => void;

function castFromFacets(mesh: FacetGraph, roles: Uint8Array, cast: Cast): void {
  // in strides, so that something thin is found early and most rays need not go far
  for (let start = 0; start < STRIDE; start++) {
    for (let facet = start; facet < roles.length; facet += STRIDE) {
      if (startsInMiddle(facet, mesh, roles)) cast(inwards(mesh, middleOf(mesh, facet), facet), facet);
    }
  }
  for (let facet = 0; facet < roles.length; facet++) {
    if (startsAtEnds(facet, mesh, roles)) for (const at of endsOf(mesh, facet)) cast(inwards(mesh, at, facet), facet);
  }
  for (let facet = 0; facet < roles.length; facet++) {
    if (startsLevel(facet, mesh, roles))
      for (const at of endsOf(mesh, facet)) cast(inwardsLevel(mesh, at, facet), facet);
  }
}

/** The facets on either side of a thin place, and their neighbours. */
function about({ from, to }: Candidate, { across }: FacetGraph, roles: Uint8Array): Set<number> {
  const facets = [from, to].flatMap((facet) => [
    facet,
    ...[0, 1, 2].map((side) => Math.trunc(across[3 * facet + side]! / 3)),
  ]);
  return new Set(facets.filter((facet) => roles[facet] === ROLE.plain));
}
