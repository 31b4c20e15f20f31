import { deflateSync } from 'fflate';
import { expect, it } from 'vitest';
import { packMesh } from '../../../src/output/page/pack-mesh.js';
import type { Packing } from '../../../src/output/page/packing.js';
import { packedLength, unpackMesh } from '../../../src/output/page/unpack-mesh.js';
import { design } from '../../../src/pipeline/design.js';
import { model } from '../../../src/pipeline/model.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import type { Mesh } from '../../../src/solid/mesh.js';
import { sharedKernel } from '../../support/shared-kernel.js';

const kernel = await sharedKernel;
const [nut] = await model(design(startSheet('nut')), { kernel });
const parts = await model(design(startSheet('coupling')), { kernel });

/** Facets by the whole numbers of their corners, the least corner first, sorted: the same for the same solid. */
function facetsOf({ positions, triangles }: Mesh, { low, step }: Packing): string[] {
  const place = (corner: number) =>
    [0, 1, 2].map((axis) => Math.round((positions[3 * corner + axis]! - low[axis]!) / step[axis]!)).join();
  return Array.from({ length: triangles.length / 3 }, (_, i) => {
    const corners = [0, 1, 2].map((k) => place(triangles[3 * i + k]!));
    const first = corners.indexOf([...corners].sort()[0]!);
    return [...corners.slice(first), ...corners.slice(0, first)].join(' ');
  }).sort();
}

it.each([nut!, ...parts].map((body) => ({ body, name: body.name })))('gives $name back, to half a step', ({ body }) => {
  const { packing, bytes } = packMesh(body);
  expect(bytes).toHaveLength(packedLength(packing));
  const back = unpackMesh(packing, Uint8Array.from([7, 7, ...bytes]), 2);
  expect(facetsOf(back, packing)).toEqual(facetsOf(body, packing));
  expect(back.positions.length).toBe(body.positions.length);
  expect(Math.max(...packing.step) / 2).toBeLessThan(0.001);
});

it('keeps corners shared, and takes open sheets and edges of three facets', () => {
  const sheet = {
    positions: Float64Array.from([0, 0, 5, 4, 0, 5, 4, 3, 5, 0, 3, 5, 2, 2, 9]),
    triangles: Uint32Array.from([0, 1, 2, 0, 2, 3, 0, 2, 4]),
  };
  const { packing, bytes } = packMesh(sheet);
  const back = unpackMesh(packing, bytes);
  expect(back.positions).toHaveLength(15);
  expect(facetsOf(back, packing)).toEqual(facetsOf(sheet, packing));
});

it('deflates to a fifth of float corners and whole numbers', () => {
  const { bytes } = packMesh(nut!);
  const plain = 4 * nut!.positions.length + 2 * nut!.triangles.length;
  expect(deflateSync(bytes, { level: 9 }).length).toBeLessThan(plain / 5);
});
