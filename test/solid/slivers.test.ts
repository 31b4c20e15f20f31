import { describe, expect, it } from 'vitest';
import { design } from '../../src/index.js';
import type { NutDesign } from '../../src/parts/nut/dimensions.js';
import { nutKind } from '../../src/parts/nut/index.js';
import { measureMesh } from '../../src/solid/measure.js';
import { removeSlivers } from '../../src/solid/slivers.js';
import { LEAST_FACET } from '../../src/solid/weld.js';
import { sharedKernel } from '../support/shared-kernel.js';

/**
 * A plate whose upper face is a fan from a far corner past four points of a rim, almost in one line as seen from there: the
 * two middle facets are caps, each the neighbour of the other. Closed by its lower face and its sides.
 */
function fanPlate(bend: number) {
  const rim = [
    [2, 0],
    [3, bend],
    [4, bend],
    [5, 0],
  ];
  const upper = [[0, 0], ...rim, [8, 3], [-1, 3]];
  const positions = new Float64Array(
    [...upper.map(([x, y]) => [x!, y!, 1]), ...upper.map(([x, y]) => [x!, y!, 0])].flat(),
  );
  const n = upper.length;
  // seen from above: the fan of the corner 0, the facet beyond it, and the rest
  const face = [
    [0, 1, 2],
    [0, 2, 3],
    [0, 3, 4],
    [0, 4, 5],
    [0, 5, 6],
  ];
  const sides = Array.from({ length: n }, (_, i) => [i, (i + 1) % n]).flatMap(([a, b]) => [
    [a! + n, b! + n, b!],
    [a! + n, b!, a!],
  ]);
  const lower = face.map(([a, b, c]) => [a! + n, c! + n, b! + n]);
  return { positions, triangles: new Uint32Array([...face, ...lower, ...sides].flat()) };
}

describe('removeSlivers', () => {
  it.each([1e-6, 4e-6, 9e-6])('takes caps out of a fan that runs along a rim, bent by %d mm', (bend) => {
    const before = fanPlate(bend);
    expect(measureMesh(before).leastFacetHeight).toBeLessThan(LEAST_FACET.height);
    const after = { ...before, triangles: removeSlivers(before.positions, before.triangles, LEAST_FACET) };
    const [was, is] = [measureMesh(before), measureMesh(after)];
    expect(is.leastFacetHeight).toBeGreaterThanOrEqual(LEAST_FACET.height);
    expect(is).toMatchObject({ openEdges: 0, repeatedVertexFacets: 0, shells: 1 });
    expect(is.volume).toBeCloseTo(was.volume, 5);
    expect(after.triangles.length).toBe(before.triangles.length);
  });

  it.each([
    [
      'Tr16x8(P4)-LH',
      29.96,
      13.44,
      { diametral: 0.37, axial: 0.05 },
      { nozzle: 0.4, chord_error: 0.05, hole_offset: 0.03 },
    ],
    ['Tr8x8(P2)-LH', 19.76, 17, { diametral: 0.47, axial: 0.21 }, { nozzle: 0.4, layer: 0.12, hole_offset: 0.04 }],
  ])(
    'leaves none at the mouth of a nut where several grooves end: %s',
    async (screw, diameter, length, fit, printer) => {
      const made = design({
        part: 'nut',
        name: 'a',
        screw,
        body: { shape: 'round', diameter, length },
        fit,
        material: 'petg',
        printer: { layer: 0.28, compensation: 'file', ...printer },
      });
      const [plan] = nutKind.bodies(made as NutDesign);
      const { leastFacetHeight, openEdges, shells } = measureMesh((await sharedKernel).fuse(plan!.recipe.shape));
      expect(leastFacetHeight).toBeGreaterThanOrEqual(0.99 * LEAST_FACET.height);
      expect([openEdges, shells]).toEqual([0, 1]);
    },
  );

  it('leaves a sound mesh as it is', () => {
    const sound = fanPlate(0.5);
    expect(removeSlivers(sound.positions, sound.triangles, LEAST_FACET)).toBe(sound.triangles);
  });
});
