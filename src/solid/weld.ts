import type { Mesh } from './mesh.js';
import { removeSlivers } from './slivers.js';
import { joinCorners } from './vertex-table.js';

/** Facets below this area, or lower than this over their longest side, are removed. */
export const LEAST_FACET = { area: 1e-9, height: 1e-5 };

/**
 * Makes a mesh that survives a file of float32 numbers unchanged: corners are rounded and joined by their exact bits,
 * facets that this folds up are taken out, and so are slivers below 1e-9 mm² or 1e-5 mm. A closed mesh stays closed: joining
 * folds facets in pairs, and what follows is edge collapses and edge flips only.
 *
 * @param mesh  a closed mesh  [mm]
 * @returns a closed mesh of float32 values; corners in order of first use  [mm]
 * @example weld(mesh).positions.every((value) => Math.fround(value) === value) // true
 */
export function weld(mesh: Mesh): Mesh {
  const rounded = new Float64Array(mesh.positions.length);
  for (let i = 0; i < rounded.length; i++) rounded[i] = Math.fround(mesh.positions[i]!) + 0;
  const { joined, firsts } = joinCorners(rounded);
  const corners = new Uint32Array(mesh.triangles.length);
  let at = 0;
  for (let i = 0; i < corners.length; i += 3) {
    const a = joined[mesh.triangles[i]!]!;
    const b = joined[mesh.triangles[i + 1]!]!;
    const c = joined[mesh.triangles[i + 2]!]!;
    if (a === b || b === c || a === c) continue;
    corners[at++] = firsts[a]!;
    corners[at++] = firsts[b]!;
    corners[at++] = firsts[c]!;
  }
  return packed(rounded, removeSlivers(rounded, corners.slice(0, at), LEAST_FACET));
}

function packed(positions: Float64Array, corners: Uint32Array): Mesh {
  const names = new Int32Array(positions.length / 3).fill(-1);
  const used = new Float64Array(positions.length);
  const triangles = new Uint32Array(corners.length);
  let count = 0;
  for (let i = 0; i < corners.length; i++) {
    const corner = corners[i]!;
    if (names[corner]! < 0) {
      used[3 * count] = positions[3 * corner]!;
      used[3 * count + 1] = positions[3 * corner + 1]!;
      used[3 * count + 2] = positions[3 * corner + 2]!;
      names[corner] = count++;
    }
    triangles[i] = names[corner]!;
  }
  return { positions: used.slice(0, 3 * count), triangles };
}
