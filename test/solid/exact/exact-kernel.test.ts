import { beforeAll, describe, expect, it } from 'vitest';
import { createExactKernel, type ExactKernel } from '../../../src/solid/exact/exact-kernel.js';
import type { MeantShape } from '../../../src/solid/exact/meant-shape.js';
import { exactKernel, HAS_EXACT, NEEDS_EXACT } from '../../support/exact-kernel.js';
import { SMALL_THREAD } from '../../support/small-thread.js';

type Point = readonly [number, number];

/** A contour through points of [reach, z]. */
const through = (...points: readonly Point[]) => points.slice(1).map((to, i) => ({ from: points[i]!, to }));

const rod = (radius: number, from: number, to: number): MeantShape => ({
  kind: 'revolution',
  contour: through([radius, from], [radius, to]),
});

/** A square about the axis, of straight sides. */
const square = (half: number) => {
  const corners: Point[] = [
    [half, -half],
    [half, half],
    [-half, half],
    [-half, -half],
  ];
  return corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % 4]! }) as const);
};

const RING: MeantShape = {
  kind: 'extrusion',
  regions: [
    {
      outer: { kind: 'circle', center: [1, 2], radius: 5 },
      holes: [{ kind: 'circle', center: [1, 2], radius: 3 }],
    },
  ],
  from: 1,
  to: 5,
};
const CONE: MeantShape = { kind: 'revolution', contour: through([3, 0], [0, 4]) };
/** 10 mm across below, 8 mm above. */
const PYRAMID: MeantShape = { kind: 'loft', outline: square(5), contour: through([0, 0], [-1, 6]) };
/** A foot of 10 mm across that narrows by 2 mm all around in a fillet. */
const FOOT: MeantShape = {
  kind: 'loft',
  outline: square(3),
  contour: [{ from: [2, 0], to: [0, 2], center: [2, 2] }],
};
const SCREW: MeantShape = { kind: 'thread', thread: SMALL_THREAD };

describe(`bodies of the exact kernel${NEEDS_EXACT}`, () => {
  let kernel: ExactKernel;
  beforeAll(async () => {
    if (HAS_EXACT) kernel = await exactKernel();
  });
  const measure = (shape: MeantShape) =>
    kernel.within([{ name: 'body', shape }], ({ bodies: [body] }) => body!.measures);

  it.skipIf(!HAS_EXACT)('a ring: π·(R² − r²)·h, both walls and both ends', () => {
    const { volume, area, center, bounds, ...rest } = measure(RING);
    expect(rest).toEqual({ solids: 1, freeEdges: 0, isSound: true });
    expect(volume).toBeCloseTo(Math.PI * 16 * 4, 5);
    expect(area).toBeCloseTo(2 * Math.PI * (5 + 3) * 4 + 2 * Math.PI * 16, 5);
    for (const [i, wanted] of [1, 2, 3].entries()) expect(center[i]).toBeCloseTo(wanted, 6);
    for (const [i, wanted] of [-4, -3, 1].entries()) expect(bounds[0][i]).toBeCloseTo(wanted, 6);
    for (const [i, wanted] of [6, 7, 5].entries()) expect(bounds[1][i]).toBeCloseTo(wanted, 6);
  });

  it.skipIf(!HAS_EXACT)('a cone of 3, 4 and 5: π·r²·h/3, π·r·(r + s), its centre a quarter up', () => {
    const { volume, area, center } = measure(CONE);
    expect(volume).toBeCloseTo(12 * Math.PI, 5);
    expect(area).toBeCloseTo(24 * Math.PI, 5);
    expect(center[2]).toBeCloseTo(1, 6);
  });

  it.skipIf(!HAS_EXACT)('a square frustum: h/3·(A + B + √(A·B))', () => {
    expect(measure(PYRAMID).volume).toBeCloseTo((6 / 3) * (100 + 64 + 80), 5);
  });

  it.skipIf(!HAS_EXACT)(
    'a square foot in a fillet: ∫ 4·(c − √(f² − t²))² dt from 0 to f, c half its width below',
    () => {
      const [c, f] = [5, 2];
      const wanted = 4 * (c * c * f - (c * Math.PI * f * f) / 2 + (2 * f ** 3) / 3);
      expect(measure(FOOT).volume).toBeCloseTo(wanted, 5);
    },
  );

  it.skipIf(!HAS_EXACT)('a screw over whole pitches: π times the mean of r²', () => {
    const mean = (0.8 * 25 + 0.6 * 16 + (0.6 * 61) / 3) / 2;
    const { volume, freeEdges } = measure(SCREW);
    expect(volume / (Math.PI * mean * 8)).toBeCloseTo(1, 6);
    expect(freeEdges).toBe(0);
  });

  it.skipIf(!HAS_EXACT)('put together, cut, and moved', () => {
    const stepped: MeantShape = { kind: 'union', of: [rod(5, 0, 2), rod(3, 0, 6)] };
    expect(measure(stepped).volume).toBeCloseTo(Math.PI * (25 * 2 + 9 * 4), 5);
    const common: MeantShape = { kind: 'intersection', of: [rod(5, 0, 2), rod(3, -9, 9), rod(4, 1, 9)] };
    expect(measure(common).volume).toBeCloseTo(Math.PI * 9, 5);
    const bored: MeantShape = { kind: 'difference', of: [rod(5, 0, 2), rod(3, -1, 3)] };
    const { volume, center } = measure({ kind: 'moved', by: [7, 0, 0], turn: 90, tilt: 90, shape: bored });
    expect(volume).toBeCloseTo(Math.PI * 32, 5);
    // what stood 1 mm up lies on +Y once it is leaned onto +X and turned
    for (const [i, wanted] of [7, 1, 0].entries()) expect(center[i]).toBeCloseTo(wanted, 6);
  });

  it.skipIf(!HAS_EXACT)('a body that cannot be built is named', () => {
    const open = square(5).slice(1, 3);
    const far = [{ kind: 'line', from: [20, 20], to: [30, 20] }] as const;
    const shape: MeantShape = {
      kind: 'extrusion',
      regions: [{ outer: { kind: 'pieces', pieces: [...open, ...far] }, holes: [] }],
      from: 0,
      to: 1,
    };
    expect(() => measure(shape)).toThrow('body: an outline does not close');
  });

  it('is refused where the script gives no such kernel', async () => {
    await expect(createExactKernel(async () => ({}), {})).rejects.toThrow('the script is no exact kernel');
  });
});
