import type { Mesh } from '../solid/mesh.js';

const HEADER = 80;
const FACET = 50;

/**
 * Reads a binary STL as it lies on the disk: three corners of their own a facet, nothing joined, normals left aside.
 *
 * @param bytes the file
 * @returns the facets  [mm]
 * @throws RangeError the length does not fit the facet count
 */
export function readStl(bytes: Uint8Array): Mesh {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const facets = bytes.length < HEADER + 4 ? -1 : view.getUint32(HEADER, true);
  if (bytes.length !== HEADER + 4 + FACET * facets)
    throw new RangeError('the length of the STL does not fit its facet count');
  const positions = new Float64Array(9 * facets);
  for (let facet = 0; facet < facets; facet++) {
    const from = HEADER + 4 + FACET * facet + 12;
    for (let i = 0; i < 9; i++) positions[9 * facet + i] = view.getFloat32(from + 4 * i, true);
  }
  const triangles = new Uint32Array(3 * facets);
  for (let i = 0; i < triangles.length; i++) triangles[i] = i;
  return { positions, triangles };
}
