import type { Mesh } from '../../solid/mesh.js';
import { ABSENT, Front, type Packing } from './packing.js';

/**
 * The mesh that was packed, from its bytes; each coordinate to half a step.
 *
 * @param packing what it is unpacked by
 * @param bytes   as `packMesh` gave them, from `from` on
 * @param from    where they begin
 */
export function unpackMesh(packing: Packing, bytes: Uint8Array, from = 0): Mesh {
  const { corners, codes, facets, low, step } = packing;
  const places = new Uint16Array(3 * corners);
  const offsetOf = (corner: number, axis: number) => {
    const row = from + 2 * axis * corners + corner;
    const code = bytes[row]! | (bytes[row + corners]! << 8);
    return (code >> 1) ^ -(code & 1);
  };
  const codeAt = (i: number) => {
    const row = from + 6 * corners + i;
    return bytes[row]! | (bytes[row + codes]! << 8) | (bytes[row + 2 * codes]! << 16);
  };
  let [met, read, written] = [0, 0, 0];
  const guessed = (axis: number, [a, b, c]: readonly number[]) =>
    a === undefined
      ? met === 0
        ? 0
        : places[3 * (met - 1) + axis]!
      : places[3 * a + axis]! + places[3 * b! + axis]! - places[3 * c! + axis]!;
  const told = (guess: readonly number[]): number => {
    const code = codeAt(read++);
    if (code === ABSENT) return -1;
    if (code > 0) return met - code + 1;
    for (let axis = 0; axis < 3; axis++) places[3 * met + axis] = guessed(axis, guess) + offsetOf(met, axis);
    return met++;
  };
  const triangles = new Uint32Array(3 * facets);
  const write = (...facet: readonly number[]) => {
    triangles.set(facet, written);
    written += 3;
  };
  const front = new Front(triangles.length);
  while (written < triangles.length) {
    const first = [told([]), told([]), told([])];
    write(...first);
    front.begin(first);
    for (let edge = front.next(); edge; edge = front.next()) {
      const third = told(edge);
      if (third < 0) continue;
      write(edge[1], edge[0], third);
      front.add(edge, third);
    }
  }
  return { positions: Float64Array.from(places, (place, i) => low[i % 3]! + place * step[i % 3]!), triangles };
}

/** How many bytes a packed mesh has. */
export function packedLength({ corners, codes }: Packing): number {
  return 6 * corners + 3 * codes;
}
