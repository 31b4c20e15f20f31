import { expect, it } from 'vitest';
import { sideOf } from '../../../../src/parts/nut/variants/twin-side.js';

type Nut = Parameters<typeof sideOf>[0];
const nut = (family: object | undefined) => ({ family, finished: { thread: { minor: 6.25 } } }) as unknown as Nut;
const TWIN = { kind: 'twin', apart: 34, each: 16, lever: 40 };

// 25 N·40/34 = 29.41 N, on crests of 0.37·16·6.25 = 37 mm²
it('holds a lever by a couple of its two threads', () => {
  const side = sideOf(nut(TWIN), 25)!;
  expect(side.force).toBeCloseTo(29.4118, 3);
  expect(side.pressure).toBeCloseTo(29.4118 / 37, 5);
  expect(sideOf(nut({ ...TWIN, lever: undefined }), 25)).toBeUndefined();
  expect(sideOf(nut({ kind: 'split', lever: 40 }), 25)).toBeUndefined();
  expect(sideOf(nut(undefined), 25)).toBeUndefined();
});
