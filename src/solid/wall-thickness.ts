import { cornerBeyond, type FacetGraph, facing, middleOf, sideOf } from './facet-graph.js';
import { ROLE } from './facet-roles.js';
import type { Ray, RayCaster, RayHit } from './ray-caster.js';

/** The thinnest place of a body. */
export interface ThinPlace {
  /** along the ray, mm */
  readonly thickness: number;
  /** where the ray starts, on the surface, mm */
  readonly at: readonly [number, number, number];
}

/** Cosine of the angle within which both faces of a wall look apart: others meet in an edge. */
export const FACING = Math.cos((40 * Math.PI) / 180);
/** Faces that look apart to within this are taken for parallel: they meet nowhere near. */
const PARALLEL = Math.cos((4 * Math.PI) / 180);
/** An edge where two faces meet is looked for this much farther than two flat ones would meet. */
const FARTHER = 1.5;
/** Normals of facets that go on smoothly into one another agree to within this angle. */
const SMOOTH = Math.cos((25 * Math.PI) / 180);
/** Facets are asked so far apart from one another. */
const STRIDE = 61;
/** One in so many facets of a thread's roots starts a ray: they all stand alike along a helix. */
const THREAD_SHARE = 6;
/** Normals of facets in one plane agree to within this. */
const FLAT = 1 - 1e-6;
/** Edges of openings longer than this have facets whose middles are far, mm. */
const LONG = 1.5;
/** Where something thin was found it is looked at more closely: in so many steps along each side of a facet. */
const PLACES = 12;
/** Facets whose normals stand more upright than this bound floors, which are as thick all over. */
const LEVEL = 0.99;
/** A ray leaves an edge across it whose direction is off by no more than this, as a sine. */
const ACROSS = 0.1;
/** Share of the way from a facet's middle to a corner. */
const NEAR_CORNER = 0.95;
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
  const { sharp, hollow } = edgesOf(mesh, roles);
  let thin: Candidate | undefined;
  const take = (ray: Ray, from: number, { facet, distance }: RayHit): void => {
    const one = { ray, from, to: facet, thickness: distance };
    if (bounds(one, mesh, roles) && !meetsInEdge(one, mesh, sharp)) thin = one;
  };
  const cast = (ray: Ray, from: number): void => {
    const hit = caster.first(ray, OWN, thin?.thickness);
    if (hit) take(ray, from, hit);
  };
  // in strides, so that something thin is found early and most rays need not go far
  for (let start = 0; start < STRIDE; start++) {
    for (let facet = start; facet < roles.length; facet += STRIDE) {
      if (starts(facet, mesh, roles)) cast(rayAt(mesh, middleOf(mesh, facet), facet), facet);
    }
  }
  // a long facet may pass something near its ends, as a lying hole passes a bore
  for (let facet = 0; facet < roles.length; facet++) {
    if (roles[facet] !== ROLE.plain || Math.abs(mesh.normals[3 * facet + 2]!) > LEVEL) continue;
    if (reachOf(mesh, facet) < 2 * LONG) continue;
    for (const at of endsOf(mesh, facet)) cast(rayAt(mesh, at, facet), facet);
  }
  // beside a face that leans, a wall is thinnest at an end, across the axis: a bearing's lead-in narrows it to its mouth
  for (let facet = 0; facet < roles.length; facet++) {
    if (roles[facet] !== ROLE.plain || !leans(mesh.normals[3 * facet + 2]!)) continue;
    for (const at of endsOf(mesh, facet)) cast(levelRayAt(mesh, at, facet), facet);
  }
  for (const { at, reach, facets } of hollow) {
    // beside short edges the middles of the facets are near enough
    if (reach > LONG / 2) for (const facet of facets) cast(rayAt(mesh, at, facet), facet);
    const middle = between(mesh, at, facets);
    // what it meets may be thin itself, or no farther than its slant makes it
    const met = caster.first(middle, OWN, thin && thin.thickness / FACING);
    if (met && met.distance < (thin?.thickness ?? Number.POSITIVE_INFINITY)) take(middle, facets[0], met);
    const straight = met && straightTo(mesh, at, met.facet);
    if (straight && isBetween(straight, mesh, facets)) cast(straight, facets[0]);
  }
  for (let before = Infinity; thin && thin.thickness < before - NEARLY; ) {
    before = thin.thickness;
    for (const facet of about(thin, mesh, roles))
      for (const at of placesOn(mesh, facet)) cast(rayAt(mesh, at, facet), facet);
  }
  return thin && { thickness: thin.thickness, at: [thin.ray[0], thin.ray[1], thin.ray[2]] };
}

/** How far a facet's longest side runs across the axis: standing ones pass nothing at their ends that they do not pass before. */
function reachOf(mesh: FacetGraph, facet: number): number {
  const { from, to } = sideOf(mesh, longestSide(facet, mesh));
  const { positions: p } = mesh;
  return Math.hypot(p[3 * from]! - p[3 * to]!, p[3 * from + 1]! - p[3 * to + 1]!);
}

/** Places near the corners of a facet. */
function endsOf(mesh: FacetGraph, facet: number): Place[] {
  const { positions: p, triangles: t } = mesh;
  const [x, y, z] = middleOf(mesh, facet);
  return [0, 1, 2].map((corner): Place => {
    const at = 3 * t[3 * facet + corner]!;
    const near = (from: number, to: number) => from + NEAR_CORNER * (to - from);
    return [near(x, p[at]!), near(y, p[at + 1]!), near(z, p[at + 2]!)];
  });
}

/** The facets on either side of a thin place, and their neighbours. */
function about({ from, to }: Candidate, { across }: FacetGraph, roles: Uint8Array): Set<number> {
  const facets = [from, to].flatMap((facet) => [
    facet,
    ...[0, 1, 2].map((side) => Math.trunc(across[3 * facet + side]! / 3)),
  ]);
  return new Set(facets.filter((facet) => roles[facet] === ROLE.plain));
}

/** Places all over a facet, its corners and sides aside. */
function placesOn({ positions: p, triangles: t }: FacetGraph, facet: number): Place[] {
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

interface Candidate {
  readonly ray: Ray;
  readonly from: number;
  readonly to: number;
  readonly thickness: number;
}

type Place = readonly [number, number, number];

interface Edge {
  readonly at: Place;
  /** half its length, mm */
  readonly reach: number;
  readonly facets: readonly [number, number];
}

/** Edges at which the solid stands out, and those at which openings stand into it; of plain faces. */
function edgesOf(mesh: FacetGraph, roles: Uint8Array): { readonly sharp: Edge[]; readonly hollow: Edge[] } {
  const { positions: p, normals: n, across } = mesh;
  const [sharp, hollow]: [Edge[], Edge[]] = [[], []];
  for (let side = 0; side < across.length; side++) {
    const other = across[side]!;
    if (other < side) continue;
    const facets = [Math.trunc(side / 3), Math.trunc(other / 3)] as const;
    if (roles[facets[0]] === ROLE.thread || facing(mesh, ...facets) > SMOOTH) continue;
    const { from, to } = sideOf(mesh, side);
    const [a, b, far, k] = [3 * from, 3 * to, 3 * cornerBeyond(mesh, other), 3 * facets[0]];
    const out =
      n[k]! * (p[far]! - p[a]!) + n[k + 1]! * (p[far + 1]! - p[a + 1]!) + n[k + 2]! * (p[far + 2]! - p[a + 2]!);
    const at: Place = [(p[a]! + p[b]!) / 2, (p[a + 1]! + p[b + 1]!) / 2, (p[a + 2]! + p[b + 2]!) / 2];
    const reach = Math.hypot(p[a]! - p[b]!, p[a + 1]! - p[b + 1]!, p[a + 2]! - p[b + 2]!) / 2;
    if (out < 0) sharp.push({ at, reach, facets });
    else if (facets.every((facet) => roles[facet] === ROLE.plain)) hollow.push({ at, reach, facets });
  }
  return { sharp, hollow };
}

/** Threads start rays at their roots and crests only, whose normals stand across the axis, and at some of many. */
function starts(facet: number, mesh: FacetGraph, roles: Uint8Array): boolean {
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

function rayAt({ normals }: FacetGraph, [x, y, z]: Place, facet: number): Ray {
  return [x, y, z, 0 - normals[3 * facet]!, 0 - normals[3 * facet + 1]!, 0 - normals[3 * facet + 2]!];
}

/** Whether a face leans from the axis, and yet bounds a wall beside it. */
function leans(nz: number): boolean {
  const square = nz * nz;
  return square > 1 - PARALLEL * PARALLEL && square < 1 - FACING * FACING;
}

/** Against a facet's normal, and level. */
function levelRayAt({ normals }: FacetGraph, [x, y, z]: Place, facet: number): Ray {
  const [nx, ny] = [normals[3 * facet]!, normals[3 * facet + 1]!];
  const length = Math.hypot(nx, ny);
  return [x, y, z, 0 - nx / length, 0 - ny / length, 0];
}

/** Midway between the two normals of an edge. */
function between({ normals }: FacetGraph, [x, y, z]: Place, [one, other]: Edge['facets']): Ray {
  const sum = [0, 1, 2].map((axis) => normals[3 * one + axis]! + normals[3 * other + axis]!) as [
    number,
    number,
    number,
  ];
  const length = Math.hypot(...sum) || 1;
  return [x, y, z, 0 - sum[0] / length, 0 - sum[1] / length, 0 - sum[2] / length];
}

/** The ray that meets a face at right angles. */
function straightTo({ normals }: FacetGraph, [x, y, z]: Place, facet: number): Ray {
  return [x, y, z, normals[3 * facet]!, normals[3 * facet + 1]!, normals[3 * facet + 2]!];
}

/** Whether a ray leaves an edge across it, between the ways against both normals: the edge is then what comes nearest. */
function isBetween([, , , u, v, w]: Ray, { normals: n }: FacetGraph, [one, other]: Edge['facets']): boolean {
  const [a, b] = [one, other].map((facet) => [n[3 * facet]!, n[3 * facet + 1]!, n[3 * facet + 2]!] as const) as [
    Place,
    Place,
  ];
  const apart = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const along = u * (a[1] * b[2] - a[2] * b[1]) + v * (a[2] * b[0] - a[0] * b[2]) + w * (a[0] * b[1] - a[1] * b[0]);
  const isAcross = Math.abs(along) < ACROSS * Math.sqrt(1 - apart * apart);
  return isAcross && [a, b].every(([x, y, z]) => 0 - (u * x + v * y + w * z) > apart);
}

/** Whether what a ray passes is a wall: its far face looks the way the ray goes, and neither face breaks an edge. */
function bounds({ ray, from, to }: Candidate, { normals }: FacetGraph, roles: Uint8Array): boolean {
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
