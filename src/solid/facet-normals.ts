import type { Mesh } from './mesh.js';
import { spannedFacets } from './spanned-facets.js';

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
  const facets = spannedFacets(p, triangles);
  for (let i = 0; i < triangles.length; i += 3) {
    const ux = facets[3 * i + 3]!;
    const uy = facets[3 * i + 4]!;
    const uz = facets[3 * i + 5]!;
    const vx = facets[3 * i + 6]!;
    const vy = facets[3 * i + 7]!;
    const vz = facets[3 * i + 8]!;
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
