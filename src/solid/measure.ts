import type { Mesh } from './mesh.js';
import { joinCorners, scatter } from './vertex-table.js';

/** What a mesh is, read from its facets alone. */
export interface MeshMeasures {
  readonly facets: number;
  /** edges not shared by exactly two facets in opposite directions */
  readonly openEdges: number;
  readonly repeatedVertexFacets: number;
  /** mm² */
  readonly leastFacetArea: number;
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
  const { joined, count } = joinCorners(mesh.positions);
  const corners = mesh.triangles.map((corner) => joined[corner]!);
  return { facets: corners.length / 3, ...edgesOf(corners, count), ...sizesOf(mesh) };
}

function edgesOf(corners: Uint32Array, count: number) {
  const facets = corners.length / 3;
  let size = 16;
  while (size < 3 * corners.length) size *= 2;
  const slots = new Int32Array(size).fill(-1);
  const uses = new Uint8Array(2 * corners.length);
  const owners = new Uint32Array(corners.length);
  const parents = Uint32Array.from({ length: facets }, (_, i) => i);
  const lows = new Uint32Array(corners.length);
  const highs = new Uint32Array(corners.length);
  let edges = 0;
  let repeatedVertexFacets = 0;
  for (let facet = 0; facet < facets; facet++) {
    const at = 3 * facet;
    if (corners[at] === corners[at + 1] || corners[at + 1] === corners[at + 2] || corners[at] === corners[at + 2]) {
      repeatedVertexFacets++;
    }
    for (let side = 0; side < 3; side++) {
      const a = corners[at + side]!;
      const b = corners[at + ((side + 1) % 3)]!;
      const [low, high] = a < b ? [a, b] : [b, a];
      let slot = scatter(low * count + high) & (size - 1);
      while (slots[slot]! >= 0 && (lows[slots[slot]!] !== low || highs[slots[slot]!] !== high)) {
        slot = (slot + 1) & (size - 1);
      }
      let edge = slots[slot]!;
      if (edge < 0) {
        edge = edges++;
        slots[slot] = edge;
        lows[edge] = low;
        highs[edge] = high;
        owners[edge] = facet;
      } else join(parents, owners[edge]!, facet);
      const use = 2 * edge + (a < b ? 0 : 1);
      uses[use] = Math.min(255, uses[use]! + 1);
    }
  }
  let openEdges = 0;
  for (let edge = 0; edge < edges; edge++) if (uses[2 * edge] !== 1 || uses[2 * edge + 1] !== 1) openEdges++;
  let shells = 0;
  for (let facet = 0; facet < facets; facet++) if (parents[facet] === facet) shells++;
  return { openEdges, repeatedVertexFacets, shells };
}

function join(parents: Uint32Array, a: number, b: number): void {
  const [low, high] = [root(parents, a), root(parents, b)].sort((x, y) => x - y) as [number, number];
  parents[high] = low;
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
  const p = Float32Array.from(positions);
  let [volume, area, leastFacetArea] = [0, 0, triangles.length === 0 ? 0 : Number.POSITIVE_INFINITY];
  const least: [number, number, number] = [Infinity, Infinity, Infinity];
  const most: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [3 * triangles[i]!, 3 * triangles[i + 1]!, 3 * triangles[i + 2]!];
    const [ax, ay, az] = [p[a]!, p[a + 1]!, p[a + 2]!];
    const [ux, uy, uz] = [p[b]! - ax, p[b + 1]! - ay, p[b + 2]! - az];
    const [vx, vy, vz] = [p[c]! - ax, p[c + 1]! - ay, p[c + 2]! - az];
    const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const facetArea = Math.sqrt(nx * nx + ny * ny + nz * nz) / 2;
    volume += (ax * nx + ay * ny + az * nz) / 6;
    area += facetArea;
    if (facetArea < leastFacetArea) leastFacetArea = facetArea;
    for (const corner of [a, b, c]) {
      for (let axis = 0; axis < 3; axis++) {
        const value = p[corner + axis]!;
        if (value < least[axis]!) least[axis] = value;
        if (value > most[axis]!) most[axis] = value;
      }
    }
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
  return { leastFacetArea, volume, area, bounds };
}
