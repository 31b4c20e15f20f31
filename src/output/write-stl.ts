import { serializeBinary } from '@jscad/stl-serializer/CSGToStlb.js';
import type { Mesh } from '../solid/mesh.js';

const IDENTITY = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

/**
 * Writes a mesh as binary STL: the same facets in the same order, float32, and the same bytes each time.
 *
 * The serializer's own entry point first snaps vertices to a grid, which opens thin facets; so its binary writer is
 * called directly.
 *
 * @param body facets, counter-clockwise seen from outside  [mm]
 * @returns the file's bytes: 84 and 50 a facet
 * @example writeStl(cube).length // 684
 */
export function writeStl(body: Mesh): Uint8Array {
  const parts = serializeBinary([{ polygons: polygonsOf(body), transforms: IDENTITY }], {});
  const bytes = new Uint8Array(parts.reduce((length, part) => length + part.byteLength, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(new Uint8Array(part), at);
    at += part.byteLength;
  }
  return bytes;
}

function polygonsOf({ positions, triangles }: Mesh): { vertices: [number, number, number][] }[] {
  const corner = (index: number): [number, number, number] => {
    const at = 3 * triangles[index]!;
    // adding 0 turns −0 into 0, so that equal corners have equal bits
    return [positions[at]! + 0, positions[at + 1]! + 0, positions[at + 2]! + 0];
  };
  return Array.from({ length: triangles.length / 3 }, (_, facet) => ({
    vertices: [corner(3 * facet), corner(3 * facet + 1), corner(3 * facet + 2)],
  }));
}
