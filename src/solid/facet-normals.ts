import type { Mesh } from './mesh.js';

/** What every facet of a mesh says of itself. */
export interface FacetNormals {
  /** unit vectors outwards, three values a facet; 0 for a facet without area */
  readonly normals: Float64Array;
  /** areas, doubled [mm²] */
  readonly twice: Float64Array;
}

/**
 * The normals of flat facets, by the right-hand rule of their corners.
 *
 *     n = (b − a) × (c − a) / |(b − a) × (c − a)|
 *
 * @param mesh closed or open [mm]
 * @returns unit normals and doubled areas
 * @source derived: the cross product of two sides
 */
export function facetNormals({ positions: p, triangles }: Mesh): FacetNormals {
  const normals = new Float64Array(triangles.length);
  const twice = new Float64Array(triangles.length / 3);
  for (let i = 0; i < triangles.length; i += 3) {
    const a = 3 * triangles[i]!;
    const b = 3 * triangles[i + 1]!;
    const c = 3 * triangles[i + 2]!;
    const ux = p[b]! - p[a]!;
    const uy = p[b + 1]! - p[a + 1]!;
    const uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!;
    const vy = p[c + 1]! - p[a + 1]!;
    const vz = p[c + 2]! - p[a + 2]!;
    const x = uy * vz - uz * vy;
    const y = uz * vx - ux * vz;
    const z = ux * vy - uy * vx;
    const length = Math.sqrt(x * x + y * y + z * z);
    normals[i] = x / (length || 1);
    normals[i + 1] = y / (length || 1);
    normals[i + 2] = z / (length || 1);
    twice[i / 3] = length;
  }
  return { normals, twice };
}
