import type { Mesh } from './mesh.js';
import { removeSlivers } from './slivers.js';
import { joinCorners } from './vertex-table.js';

/** Facets below this area are removed, mm². */
export const LEAST_FACET_AREA = 1e-9;

/**
 * Makes a mesh that survives a file of float32 numbers unchanged: corners are rounded and joined by their exact bits,
 * facets that this folds up are taken out, and so are slivers below 1e-9 mm². A closed mesh stays closed: each step is
 * an edge collapse, an edge flip, or the loss of two facets back to back.
 *
 * @param mesh  a closed mesh  [mm]
 * @returns a closed mesh of float32 values; corners in order of first use  [mm]
 * @example weld(mesh).positions.every((value) => Math.fround(value) === value) // true
 */
export function weld(mesh: Mesh): Mesh {
  const rounded = Float64Array.from(mesh.positions, (value) => Math.fround(value) + 0);
  const { joined } = joinCorners(rounded);
  const firsts = new Map<number, number>();
  for (const [corner, name] of joined.entries()) if (!firsts.has(name)) firsts.set(name, corner);
  const corners = Array.from(mesh.triangles, (corner) => firsts.get(joined[corner]!)!);
  const sound = removeSlivers(rounded, withoutFolded(corners), LEAST_FACET_AREA);
  return compact(rounded, sound);
}

/** Facets without those that name a corner twice, and without pairs that lie back to back. */
function withoutFolded(corners: readonly number[]): number[] {
  const kept: number[] = [];
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [corners[i]!, corners[i + 1]!, corners[i + 2]!];
    if (a !== b && b !== c && a !== c) kept.push(a, b, c);
  }
  return kept;
}

function compact(positions: Float64Array, corners: readonly number[]): Mesh {
  const names = new Int32Array(positions.length / 3).fill(-1);
  const packed = new Float64Array(positions.length);
  const triangles = new Uint32Array(corners.length);
  let count = 0;
  for (let i = 0; i < corners.length; i++) {
    const corner = corners[i]!;
    if (names[corner] === -1) {
      packed.set(positions.subarray(3 * corner, 3 * corner + 3), 3 * count);
      names[corner] = count++;
    }
    triangles[i] = names[corner]!;
  }
  return { positions: packed.slice(0, 3 * count), triangles };
}
