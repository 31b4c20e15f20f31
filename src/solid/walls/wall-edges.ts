import { cornerBeyond, type FacetGraph, facing, sideOf } from '../facet-graph.js';
import { ROLE } from '../facet-roles.js';

/** A place on the surface, mm. */
export type Place = readonly [number, number, number];

/** An edge of a body, by its middle. */
export interface Edge {
  readonly at: Place;
  /** half its length, mm */
  readonly reach: number;
  readonly facets: readonly [number, number];
}

/** Normals of facets that go on smoothly into one another agree to within this angle. */
export const SMOOTH = Math.cos((25 * Math.PI) / 180);

/** Edges at which the solid stands out, and those at which openings stand into it; of plain faces. */
export function wallEdges(mesh: FacetGraph, roles: Uint8Array): { readonly sharp: Edge[]; readonly hollow: Edge[] } {
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
