import { facetNormals } from '../../solid/facet-normals.js';
import type { Mesh } from '../../solid/mesh.js';

/** Facets that meet at a smaller angle are one curved face. */
const CREASE_DEGREES = 32;

/**
 * A normal for each corner of each facet: curved faces look smooth, edges stay sharp.
 *
 * @param mesh facets that share corners [mm]
 * @returns unit normals, nine values a facet; 0 for a facet without area
 */
export function creasedNormals({ positions, triangles }: Mesh): Float32Array {
  const { normals: faces, twice } = facetNormals({ positions, triangles });
  const { starts, facets } = facetsAround(triangles, positions.length / 3);
  const least = Math.cos((CREASE_DEGREES * Math.PI) / 180);
  const normals = new Float32Array(3 * triangles.length);
  for (let corner = 0; corner < triangles.length; corner++) {
    const own = 3 * Math.trunc(corner / 3);
    const nx = faces[own]!;
    const ny = faces[own + 1]!;
    const nz = faces[own + 2]!;
    let x = 0;
    let y = 0;
    let z = 0;
    const vertex = triangles[corner]!;
    for (let i = starts[vertex]!; i < starts[vertex + 1]!; i++) {
      const other = 3 * facets[i]!;
      if (nx * faces[other]! + ny * faces[other + 1]! + nz * faces[other + 2]! < least) continue;
      const area = twice[other / 3]!;
      x += area * faces[other]!;
      y += area * faces[other + 1]!;
      z += area * faces[other + 2]!;
    }
    const length = Math.sqrt(x * x + y * y + z * z) || 1;
    normals[3 * corner] = x / length;
    normals[3 * corner + 1] = y / length;
    normals[3 * corner + 2] = z / length;
  }
  return normals;
}

/** Which facets touch each vertex: those of vertex v are facets[starts[v]] up to facets[starts[v + 1]]. */
function facetsAround(triangles: Uint32Array, vertices: number): { starts: Uint32Array; facets: Uint32Array } {
  const starts = new Uint32Array(vertices + 1);
  for (const vertex of triangles) starts[vertex + 1]!++;
  for (let v = 0; v < vertices; v++) starts[v + 1]! += starts[v]!;
  const next = starts.slice();
  const facets = new Uint32Array(triangles.length);
  for (let corner = 0; corner < triangles.length; corner++) {
    facets[next[triangles[corner]!]!++] = Math.trunc(corner / 3);
  }
  return { starts, facets };
}
