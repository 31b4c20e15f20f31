import { cornerBeyond, type FacetGraph, sideOf } from './facet-graph.js';
import { ROLE } from './facet-roles.js';

/** A ceiling that is printed over air. */
export interface Ceiling {
  /** seen from below, mm² */
  readonly area: number;
  /** of its lowest place over the bed, mm */
  readonly height: number;
  /** how far lines laid across it reach from hold to hold, mm; undefined where they would end in the air */
  readonly bridge?: number;
}

/** How a body lies on the bed, and what is printed with. */
export interface PrintedAs {
  /** it is turned over from how it is modelled */
  readonly turnOver: boolean;
  /** mm */
  readonly layer: number;
}

/** A line that is held at one end only prints so far, mm. @source common-practice */
export const LEDGE = 0.5;

/** Ceilings smaller than this hang by their neighbours, and so do ends of larger ones, mm². @source common-practice */
export const LEAST_CEILING = 1;

/** Surfaces that lean farther from the vertical than this want support, degrees. @source common-practice */
const STEEPEST = 45;
/** A surface drawn at that angle exactly does not; facets of a cone lean by a little more or less than it does. */
const LEEWAY = 0.012;

/**
 * The ceilings of a body as it lies on the bed: facets that look down by more than 45° from the vertical, thread flanks
 * and marks aside, put together where they share an edge.
 *
 * @param mesh   a closed mesh                       [mm]
 * @param roles  of its facets
 * @param as     how it is printed                   [mm]
 * @returns ceilings, the largest first; those that lie on the bed or within half a layer of it left out
 */
export function ceilingsOf(mesh: FacetGraph, roles: Uint8Array, { turnOver, layer }: PrintedAs): Ceiling[] {
  const { positions: p, triangles: t, normals } = mesh;
  const up = turnOver ? -1 : 1;
  const bed = bedOf(p, up);
  const height = (corner: number) => up * p[3 * corner + 2]! - bed;
  const limit = 0 - Math.sin((STEEPEST * Math.PI) / 180) - LEEWAY;
  const hanging = new Uint8Array(t.length / 3);
  for (let facet = 0; facet < hanging.length; facet++) {
    if (roles[facet] === ROLE.thread || roles[facet] === ROLE.mark) continue;
    const [a, b, c] = [t[3 * facet]!, t[3 * facet + 1]!, t[3 * facet + 2]!];
    if (Math.max(height(a), height(b), height(c)) < layer / 2) continue;
    if (up * normals[3 * facet + 2]! < limit) hanging[facet] = 1;
  }
  return groupsOf(mesh, hanging)
    .map((group) => ceilingOf(group, mesh, height))
    .sort((a, b) => b.area - a.area);
}

function bedOf(p: Float64Array, up: number): number {
  let bed = Number.POSITIVE_INFINITY;
  for (let i = 2; i < p.length; i += 3) bed = Math.min(bed, up * p[i]!);
  return bed;
}

interface Group {
  readonly facets: readonly number[];
  /** sides on its rim: the corner they start at, the corner they end at, and the far corner of the facet beyond */
  readonly rim: readonly (readonly [from: number, to: number, beyond: number])[];
}

/** Facets that hang and share edges, with the sides where they end. */
function groupsOf(mesh: FacetGraph, hanging: Uint8Array): Group[] {
  const seen = new Uint8Array(hanging.length);
  const groups: Group[] = [];
  for (let first = 0; first < hanging.length; first++) {
    if (hanging[first] === 0 || seen[first] === 1) continue;
    const facets = [first];
    const rim: [number, number, number][] = [];
    seen[first] = 1;
    for (let i = 0; i < facets.length; i++) {
      for (let side = 3 * facets[i]!; side < 3 * facets[i]! + 3; side++) {
        const other = mesh.across[side]!;
        if (other < 0) continue;
        const beyond = Math.trunc(other / 3);
        if (hanging[beyond] === 0) {
          const { from, to } = sideOf(mesh, side);
          rim.push([from, to, cornerBeyond(mesh, other)]);
        } else if (seen[beyond] === 0) {
          seen[beyond] = 1;
          facets.push(beyond);
        }
      }
    }
    groups.push({ facets, rim });
  }
  return groups;
}

function ceilingOf(
  { facets, rim }: Group,
  { positions: p, triangles: t }: FacetGraph,
  height: (corner: number) => number,
): Ceiling {
  const areas: number[] = [];
  let [area, lowest] = [0, Number.POSITIVE_INFINITY];
  for (const facet of facets) {
    const [a, b, c] = [t[3 * facet]!, t[3 * facet + 1]!, t[3 * facet + 2]!];
    const [ux, uy] = [p[3 * b]! - p[3 * a]!, p[3 * b + 1]! - p[3 * a + 1]!];
    const [vx, vy] = [p[3 * c]! - p[3 * a]!, p[3 * c + 1]! - p[3 * a + 1]!];
    const own = Math.abs(ux * vy - uy * vx) / 2;
    areas.push(own);
    area += own;
    lowest = Math.min(lowest, height(a), height(b), height(c));
  }
  const sides = rim.map(([from, to, beyond]): RimSide => {
    // a wall that goes down from the rim holds it; where the solid only goes on upwards, the rim hangs in the air
    const held = height(beyond) < Math.max(height(from), height(to)) - 1e-6;
    return { from: [p[3 * from]!, p[3 * from + 1]!], to: [p[3 * to]!, p[3 * to + 1]!], held };
  });
  const pieces = facets.map((facet, i): Piece => {
    const [a, b, c] = [t[3 * facet]!, t[3 * facet + 1]!, t[3 * facet + 2]!];
    const middle: Point = [
      (p[3 * a]! + p[3 * b]! + p[3 * c]!) / 3,
      (p[3 * a + 1]! + p[3 * b + 1]! + p[3 * c + 1]!) / 3,
    ];
    return { middle, area: areas[i]! };
  });
  const bridge = bridged(sides, pieces) ?? narrow(sides);
  return { area, height: lowest, ...(bridge === undefined ? {} : { bridge }) };
}

type Point = readonly [number, number];

interface RimSide {
  readonly from: Point;
  readonly to: Point;
  readonly held: boolean;
}

/** How far a ceiling reaches from what holds it, where that is no farther than a ledge; undefined where it is. */
function narrow(rim: readonly RimSide[]): number | undefined {
  const [held, free] = [rim.filter((side) => side.held), rim.filter((side) => !side.held)];
  let reach = 0;
  for (const { from } of free) {
    let near = Number.POSITIVE_INFINITY;
    for (const side of held) near = Math.min(near, toSide(from, side));
    reach = Math.max(reach, near);
    if (reach > LEDGE) return undefined;
  }
  return reach;
}

function toSide([x, y]: Point, { from, to }: RimSide): number {
  const [ux, uy] = [to[0] - from[0], to[1] - from[1]];
  const square = ux * ux + uy * uy;
  const along = (x - from[0]) * ux + (y - from[1]) * uy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, along / square));
  return Math.hypot(x - from[0] - share * ux, y - from[1] - share * uy);
}

/** A facet of a ceiling, seen from below. */
interface Piece {
  readonly middle: Point;
  readonly area: number;
}

/** Ways in which lines are laid that are told apart, degrees. */
const WAYS = 5;

/**
 * How far lines must reach that are laid across a ceiling, all in one way, each from hold to hold; in the way in which
 * the longest is shortest. Undefined where in every way more than hangs by its neighbours ends in the air.
 */
function bridged(rim: readonly RimSide[], pieces: readonly Piece[]): number | undefined {
  const ways = new Set<number>();
  for (const { from, to, held } of rim) {
    // away from a side that holds, or beside one that ends in the air
    const along = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
    ways.add((Math.round((along + (held ? 90 : 0)) / WAYS) * WAYS + 360) % 180);
  }
  let least: number | undefined;
  for (const way of ways) {
    const [c, s] = [Math.cos((way * Math.PI) / 180), Math.sin((way * Math.PI) / 180)];
    let [longest, hangs] = [0, 0];
    for (const { middle, area } of pieces) {
      const length = lineThrough(middle, c, s, rim);
      if (length === Number.POSITIVE_INFINITY) hangs += area;
      if (length < Number.POSITIVE_INFINITY || hangs >= LEAST_CEILING) longest = Math.max(longest, length);
      if (longest >= (least ?? Number.POSITIVE_INFINITY)) break;
    }
    if (longest < (least ?? Number.POSITIVE_INFINITY)) least = longest;
  }
  return least;
}

/** Length of the line through a point to the rim on either side; endless where an end is not held. */
function lineThrough([x, y]: Point, c: number, s: number, rim: readonly RimSide[]): number {
  let [before, after] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [heldBefore, heldAfter] = [false, false];
  for (const { from, to, held } of rim) {
    const [u0, u1] = [c * (from[0] - x) + s * (from[1] - y), c * (to[0] - x) + s * (to[1] - y)];
    const [v0, v1] = [c * (from[1] - y) - s * (from[0] - x), c * (to[1] - y) - s * (to[0] - x)];
    if (v0 > 0 === v1 > 0) continue;
    const along = u0 + ((u1 - u0) * v0) / (v0 - v1);
    if (along >= 0 && along < after) [after, heldAfter] = [along, held];
    if (along < 0 && along > before) [before, heldBefore] = [along, held];
  }
  const length = after - before;
  // a short line need be held at one end only
  const isHeld = length <= LEDGE ? heldBefore || heldAfter : heldBefore && heldAfter;
  return isHeld ? length : Number.POSITIVE_INFINITY;
}
