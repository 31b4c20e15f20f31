import { listEdges } from './edge-table.js';
import { facetNormals } from './facet-normals.js';
import type { Mesh } from './mesh.js';

/** A closed mesh with what its facets are to one another. */
export interface FacetGraph extends Mesh {
  /** unit normals, three numbers a facet */
  readonly normals: Float64Array;
  /** for each side of each facet the same edge's side of the facet beyond it; −1 where there is none */
  readonly across: Int32Array;
}

/**
 * Works out normals and neighbours of all facets once, for whoever measures them.
 *
 * @param mesh  closed, each edge shared by two facets  [mm]
 * @returns the same mesh with normals and neighbours
 * @example facetGraph(cube).across.every((side) => side >= 0) // true
 */
export function facetGraph({ positions, triangles }: Mesh): FacetGraph {
  const { count, edgeOf } = listEdges(triangles);
  const first = new Int32Array(count).fill(-1);
  const across = new Int32Array(triangles.length).fill(-1);
  for (let side = 0; side < edgeOf.length; side++) {
    const edge = edgeOf[side]!;
    const other = first[edge]!;
    if (other < 0) first[edge] = side;
    else {
      across[side] = other;
      across[other] = side;
    }
  }
  return { positions, triangles, across, normals: facetNormals({ positions, triangles }).normals };
}

/** Cosine of the angle between the normals of two facets. */
export function facing({ normals: n }: Pick<FacetGraph, 'normals'>, one: number, other: number): number {
  const [a, b] = [3 * one, 3 * other];
  return n[a]! * n[b]! + n[a + 1]! * n[b + 1]! + n[a + 2]! * n[b + 2]!;
}

/** The middle of a facet [mm]. */
export function middleOf({ positions: p, triangles: t }: Mesh, facet: number): readonly [number, number, number] {
  const [a, b, c] = [3 * t[3 * facet]!, 3 * t[3 * facet + 1]!, 3 * t[3 * facet + 2]!];
  return [
    (p[a]! + p[b]! + p[c]!) / 3,
    (p[a + 1]! + p[b + 1]! + p[c + 1]!) / 3,
    (p[a + 2]! + p[b + 2]! + p[c + 2]!) / 3,
  ];
}

/** The corners that a side runs between, and the facet that it belongs to. */
export function sideOf({ triangles: t }: Mesh, side: number) {
  return { from: t[side]!, to: t[side % 3 === 2 ? side - 2 : side + 1]!, facet: Math.trunc(side / 3) };
}

/** The corner of a facet that one of its sides leaves out. */
export function cornerBeyond({ triangles: t }: Mesh, side: number): number {
  return t[side % 3 === 0 ? side + 2 : side - 1]!;
}
