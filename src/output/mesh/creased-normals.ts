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
  const faces = faceNormals(positions, triangles);
  const { starts, facets } = facetsAround(triangles, positions.length / 3);
  const least = Math.cos((CREASE_DEGREES * Math.PI) / 180);
  const normals = new Float32Array(3 * triangles.length);
  for (let corner = 0; corner < triangles.length; corner++) {
    const own = 4 * Math.trunc(corner / 3);
    const nx = faces[own]!;
    const ny = faces[own + 1]!;
    const nz = faces[own + 2]!;
    let x = 0;
    let y = 0;
    let z = 0;
    const vertex = triangles[corner]!;
    for (let i = starts[vertex]!; i < starts[vertex + 1]!; i++) {
      const other = 4 * facets[i]!;
      if (nx * faces[other]! + ny * faces[other + 1]! + nz * faces[other + 2]! < least) continue;
      const area = faces[other + 3]!;
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

/** Unit normal and twice the area of each facet: four values each. */
function faceNormals(p: Float64Array, triangles: Uint32Array): Float64Array {
  const faces = new Float64Array((4 * triangles.length) / 3);
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
    const area = Math.sqrt(x * x + y * y + z * z);
    const at = (4 * i) / 3;
    faces[at] = x / (area || 1);
    faces[at + 1] = y / (area || 1);
    faces[at + 2] = z / (area || 1);
    faces[at + 3] = area;
  }
  return faces;
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
