import { type EdgeTable, listEdges } from './edge-table.js';
import type { Mesh } from './mesh.js';
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
  for (let i = 0; i < triangles.length; i += 3) {
    const a = 3 * triangles[i]!;
    const b = 3 * triangles[i + 1]!;
    const c = 3 * triangles[i + 2]!;
    const ax = p[a]!;
    const ay = p[a + 1]!;
    const az = p[a + 2]!;
    const ux = p[b]! - ax;
    const uy = p[b + 1]! - ay;
    const uz = p[b + 2]! - az;
    const vx = p[c]! - ax;
    const vy = p[c + 1]! - ay;
    const vz = p[c + 2]! - az;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const facetArea = Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
    volume += (ax * nx + ay * ny + az * nz) / 6;
    area += facetArea;
    if (facetArea < leastFacetArea) leastFacetArea = facetArea;
    const longest = Math.max(
      ux * ux + uy * uy + uz * uz,
      vx * vx + vy * vy + vz * vz,
      (ux - vx) ** 2 + (uy - vy) ** 2 + (uz - vz) ** 2,
    );
    const height = longest === 0 ? 0 : (2 * facetArea) / Math.sqrt(longest);
    if (height < leastFacetHeight) leastFacetHeight = height;
    widen(least, most, p, a);
    widen(least, most, p, b);
    widen(least, most, p, c);
  }
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
