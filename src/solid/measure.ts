import { type EdgeTable, listEdges } from './edge-table.js';
import type { Mesh } from './mesh.js';
import { spannedFacets } from './spanned-facets.js';
import { joinCorners } from './vertex-table.js';

/** What a mesh is, read from its facets alone. */
export interface MeshMeasures {
  readonly facets: number;
  /** edges not shared by exactly two facets in opposite directions */
  readonly openEdges: number;
  readonly repeatedVertexFacets: number;
  /** mm² */
  readonly leastFacetArea: number;
  /** of a facet over its longest side, mm */
  readonly leastFacetHeight: number;
  /** pieces joined by shared edges */
  readonly shells: number;
  /** mm³, positive where facets face outwards */
  readonly volume: number;
  /** mm² */
  readonly area: number;
  /** least and most x, y, z, mm */
  readonly bounds: readonly [readonly [number, number, number], readonly [number, number, number]];
}

/**
 * Measures a mesh as a reader of its file would: corners rounded to float32 and joined by their exact bits.
 *
 * @param mesh  facets  [mm]
 * @returns counts, areas and bounds; bounds are 0 for an empty mesh  [mm, mm², mm³]
 * @example measureMesh(cube).openEdges // 0
 */
export function measureMesh(mesh: Mesh): MeshMeasures {
  const { joined } = joinCorners(mesh.positions);
  const corners = new Uint32Array(mesh.triangles.length);
  for (let i = 0; i < corners.length; i++) corners[i] = joined[mesh.triangles[i]!]!;
  const edges = listEdges(corners);
  return {
    facets: corners.length / 3,
    openEdges: openEdgesOf(edges),
    repeatedVertexFacets: repeatedVertexFacetsOf(corners),
    shells: shellsOf(edges),
    ...sizesOf(mesh),
  };
}

function openEdgesOf({ count, uses }: EdgeTable): number {
  let open = 0;
  for (let edge = 0; edge < count; edge++) if (uses[2 * edge] !== 1 || uses[2 * edge + 1] !== 1) open++;
  return open;
}

function repeatedVertexFacetsOf(corners: Uint32Array): number {
  let repeated = 0;
  for (let i = 0; i < corners.length; i += 3) {
    const a = corners[i];
    const b = corners[i + 1];
    const c = corners[i + 2];
    if (a === b || b === c || a === c) repeated++;
  }
  return repeated;
}

function shellsOf({ count, edgeOf }: EdgeTable): number {
  const parents = new Uint32Array(edgeOf.length / 3);
  for (let facet = 0; facet < parents.length; facet++) parents[facet] = facet;
  const owners = new Int32Array(count).fill(-1);
  let shells = parents.length;
  for (let side = 0; side < edgeOf.length; side++) {
    const facet = Math.trunc(side / 3);
    const owner = owners[edgeOf[side]!]!;
    if (owner < 0) owners[edgeOf[side]!] = facet;
    else {
      const a = root(parents, owner);
      const b = root(parents, facet);
      if (a !== b) shells--;
      parents[Math.max(a, b)] = Math.min(a, b);
    }
  }
  return shells;
}

function root(parents: Uint32Array, facet: number): number {
  let at = facet;
  while (parents[at] !== at) {
    parents[at] = parents[parents[at]!]!;
    at = parents[at]!;
  }
  return at;
}

function sizesOf({ positions, triangles }: Mesh) {
  const p = new Float32Array(positions);
  const none = triangles.length === 0 ? 0 : Number.POSITIVE_INFINITY;
  let [volume, area, leastFacetArea, leastFacetHeight] = [0, 0, none, none];
  const least: [number, number, number] = [Infinity, Infinity, Infinity];
  const most: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  const facets = spannedFacets(p, triangles);
  for (let at = 0; at < facets.length; at += 9) {
    const ux = facets[at + 3]!;
    const uy = facets[at + 4]!;
    const uz = facets[at + 5]!;
    const vx = facets[at + 6]!;
    const vy = facets[at + 7]!;
    const vz = facets[at + 8]!;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const facetArea = Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
    volume += (facets[at]! * nx + facets[at + 1]! * ny + facets[at + 2]! * nz) / 6;
    area += facetArea;
    if (facetArea < leastFacetArea) leastFacetArea = facetArea;
    const longest = Math.max(
      ux * ux + uy * uy + uz * uz,
      vx * vx + vy * vy + vz * vz,
      (ux - vx) ** 2 + (uy - vy) ** 2 + (uz - vz) ** 2,
    );
    const height = longest === 0 ? 0 : (2 * facetArea) / Math.sqrt(longest);
    if (height < leastFacetHeight) leastFacetHeight = height;
  }
  for (const corner of triangles) widen(least, most, p, 3 * corner);
  const empty = triangles.length === 0;
  const bounds = (
    empty
      ? [
          [0, 0, 0],
          [0, 0, 0],
        ]
      : [least, most]
  ) as MeshMeasures['bounds'];
  return { leastFacetArea, leastFacetHeight, volume, area, bounds };
}

/** Takes the corner that begins at an index into the bounds. */
function widen(least: number[], most: number[], p: Float32Array, corner: number): void {
  for (let axis = 0; axis < 3; axis++) {
    const value = p[corner + axis]!;
    if (value < least[axis]!) least[axis] = value;
    if (value > most[axis]!) most[axis] = value;
  }
}
