import type { SolidMesh } from './kernel-objects.js';
import { placedSurface, type Surface } from './surfaces.js';

/** Surfaces as they were modelled, and which of them each number on a facet means. */
export interface Numbered {
  readonly surfaces: readonly Surface[];
  readonly surfaceOf: readonly number[];
}

/** Surfaces of a solid where they lie now, and which of them each of its facets belongs to. */
export interface Placed {
  readonly surfaces: readonly Surface[];
  readonly tags: Uint32Array;
}

/** Surfaces of a mesh that the kernel gave, each moved as the run of facets that lies on it. */
export function placedSurfaces(mesh: SolidMesh, { surfaces, surfaceOf }: Numbered): Placed {
  const { faceID, runIndex } = mesh;
  const placed: Surface[] = [];
  const tags = new Uint32Array(faceID.length);
  for (let run = 0; run + 1 < runIndex.length; run++) {
    const matrix = matrixOf(mesh, run);
    const own = new Map<number, number>();
    for (let facet = runIndex[run]! / 3; facet < runIndex[run + 1]! / 3; facet++) {
      const surface = surfaceOf[faceID[facet]!]!;
      let tag = own.get(surface);
      if (tag === undefined) {
        tag = placed.length;
        placed.push(placedSurface(surfaces[surface]!, matrix));
        own.set(surface, tag);
      }
      tags[facet] = tag;
    }
  }
  return { surfaces: placed, tags };
}

/** How a run was moved, row by row; the kernel gives it by columns. */
function matrixOf({ runTransform }: SolidMesh, run: number): number[] {
  return [0, 1, 2].flatMap((row) => [0, 1, 2, 3].map((column) => runTransform[12 * run + 3 * column + row]!));
}
