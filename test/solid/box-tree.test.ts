import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxTree, DEEPEST } from '../../src/solid/box-tree.js';

const corner = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 3, maxLength: 3 });
const soup = fc.array(fc.tuple(corner, corner, corner), { minLength: 1, maxLength: 80 });
/** Facets that crowd towards a point, each half as far from it as the one before. */
const crowd = fc
  .integer({ min: 1, max: 400 })
  .map((count) => Array.from({ length: count }, (_, i) => [0, 1, 2].map((axis) => [axis === 0 ? 0.5 ** i : 0, 0, 0])));

const meshOf = (facets: readonly (readonly (readonly number[])[])[]) => ({
  positions: Float64Array.from(facets.flat(2)),
  triangles: Uint32Array.from({ length: 3 * facets.length }, (_, i) => i),
});

describe('a tree of boxes', () => {
  it('holds each facet once, within all boxes above it, and is no deeper than it says', () => {
    fc.assert(
      fc.property(fc.oneof(soup, crowd), (facets) => {
        const { positions, triangles } = meshOf(facets);
        const { order, corners, start, size, boxes } = boxTree({ positions, triangles });
        expect([...order].sort((a, b) => a - b)).toEqual(facets.map((_, i) => i));
        expect([...corners]).toEqual([...order].flatMap((facet) => [...triangles.subarray(3 * facet, 3 * facet + 3)]));
        let deepest = 0;
        let outside = 0;
        /** the places below a node, whose box must hold their corners */
        const below = (node: number, depth: number): number[] => {
          deepest = Math.max(deepest, depth);
          const places =
            size[node] === 0
              ? [...below(node + 1, depth + 1), ...below(start[node]!, depth + 1)]
              : Array.from({ length: size[node]! }, (_, i) => start[node]! + i);
          for (const i of places.flatMap((place) => [3 * place, 3 * place + 1, 3 * place + 2])) {
            for (let axis = 0; axis < 3; axis++) {
              const value = positions[3 * corners[i]! + axis]!;
              if (value < boxes[6 * node + axis]! || value > boxes[6 * node + 3 + axis]!) outside++;
            }
          }
          return places;
        };
        expect(below(0, 0)).toEqual(facets.map((_, i) => i));
        expect(outside).toBe(0);
        expect(deepest).toBeLessThanOrEqual(DEEPEST);
      }),
      { numRuns: 60, seed: 8 },
    );
  });
});
