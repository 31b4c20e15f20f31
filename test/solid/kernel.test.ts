import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import { type MeshMeasures, measureMesh } from '../../src/solid/measure.js';
import { circleOutline, hexagonOutline, polygonArea, rectangleOutline } from '../../src/solid/outline.js';
import { cylinder, type Lathe, type Shape } from '../../src/solid/recipe.js';
import { textOutlines } from '../../src/solid/text-outlines.js';
import { latheVolume, prismVolume, threadVolume } from '../../src/solid/volume.js';
import { InputError } from '../../src/units/faults.js';
import { flangedNut, nutThread, TR8X2 } from './examples.js';
import { randomNut } from './random-nuts.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

function expectSound(measures: MeshMeasures): void {
  expect(measures).toMatchObject({ openEdges: 0, repeatedVertexFacets: 0, shells: 1 });
  expect(measures.leastFacetArea).toBeGreaterThanOrEqual(1e-9);
  expect(measures.volume).toBeGreaterThan(0);
}

function fused(shape: Shape): MeshMeasures {
  return measureMesh(kernel.fuse(shape));
}

describe('createKernel', () => {
  const bytes = readFileSync(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm'));

  it('takes given bytes, whole or as a view, in place of those beside its script', async () => {
    const buffer = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);
    for (const wasm of [bytes, buffer] as const) {
      const given = await createKernel({ wasm });
      expect(given.fuse(flangedNut(TR8X2, 6))).toEqual(kernel.fuse(flangedNut(TR8X2, 6)));
    }
  });

  it('refuses other bytes in one line', async () => {
    await expect(createKernel({ wasm: new Uint8Array(12) })).rejects.toThrow(
      /wasm: 12 bytes.*must be the bytes of manifold-3d\/manifold\.wasm/,
    );
  });
});

describe('fuse', () => {
  it('builds prisms with holes, of every outline', () => {
    const outlines = [
      rectangleOutline({ size: [30, 20], radius: 3 }),
      circleOutline({ radius: 3, sides: 32, circumscribed: true, center: [-7, 0] }),
      hexagonOutline({ acrossFlats: 7, center: [7, 0] }),
    ] as const;
    const measures = fused({ kind: 'prism', outlines, from: -1, to: 4 });
    expectSound(measures);
    expect(measures.volume).toBeCloseTo(prismVolume({ outlines, from: -1, to: 4 }), 2);
    expect(measures.bounds).toEqual([
      [-15, -10, -1],
      [15, 10, 4],
    ]);
  });

  it('keeps points in a line on an outline without a T-joint', () => {
    const outline = [
      [0, 0],
      [1, 0],
      [2, 0],
      [2, 1],
      [2, 2],
      [0, 2],
      [0, 1],
    ] as const;
    const measures = fused({ kind: 'prism', outlines: [outline], from: 0, to: 1 });
    expectSound(measures);
    expect(measures.volume).toBeCloseTo(polygonArea(outline), 9);
  });

  it('builds square, hexagonal and round lathes with fillet, cone and chamfer', () => {
    for (const [sides, turn] of [
      [4, 45],
      [6, 0],
      [64, 0],
    ] as const) {
      const contour = [
        [8, 0],
        [6.5, 0.4],
        [6, 1.5],
        [6, 9],
        [5, 10],
        [0, 10.5],
      ] as const;
      const lathe: Lathe = { kind: 'lathe', sides, turn, circumscribed: true, contour };
      const measures = fused(lathe);
      expectSound(measures);
      expect(measures.volume).toBeCloseTo(latheVolume(lathe), 2);
      if (sides === 4)
        expect(measures.bounds).toEqual([
          [-8, -8, 0],
          [8, 8, 10.5],
        ]);
    }
  });

  it('moves, turns and leans', () => {
    const bar = cylinder({ radius: 1, sides: 4, circumscribed: false, from: 0, to: 5 });
    expect(fused({ kind: 'moved', tilt: 90, turn: 90, by: [1, 2, 3], shape: bar }).bounds).toEqual([
      [0, 2, 2],
      [2, 7, 4],
    ]);
  });

  it('makes a nut in one piece with the volume of its sections', () => {
    const length = 15;
    const figures = TR8X2;
    const thread = nutThread(figures, -1, length + 1);
    const body: Lathe = {
      kind: 'lathe',
      sides: 96,
      circumscribed: false,
      contour: [
        [16, 0],
        [16, 4],
        [7, 4],
        [7, length],
      ],
    };
    const measures = fused({ kind: 'difference', of: [body, { kind: 'thread', thread }] });
    expectSound(measures);
    expect(measures.facets).toBeLessThan(12_000);
    const expected = latheVolume(body) - threadVolume(thread, { from: 0, to: length });
    expect(Math.abs(measures.volume / expected - 1)).toBeLessThan(2e-4);
    expect(measures.bounds).toEqual([
      [-16, -16, 0],
      [16, 16, 15],
    ]);
  });

  it.each([1, 2, 3, 4, 5, 6])('makes sound flanged nuts of both hands, %i starts', (starts) => {
    for (const hand of ['right', 'left'] as const) {
      const measures = fused(flangedNut({ ...TR8X2, starts, hand }, 15));
      expectSound(measures);
      expect(measures.facets).toBeLessThan(12_000);
    }
  });

  it('makes both hands of one volume', () => {
    const [right, left] = (['right', 'left'] as const).map((hand) => fused(flangedNut({ ...TR8X2, hand }, 12)).volume);
    expect(left).toBeCloseTo(right!, 4);
  });

  it('makes sound nuts of any size, form, lead and body', () => {
    fc.assert(
      fc.property(randomNut, ({ shape, reach, length }) => {
        const measures = fused(shape);
        expectSound(measures);
        expect(Math.abs(measures.bounds[1][0] - reach)).toBeLessThan(0.005);
        expect(measures.bounds[0][2]).toBe(0);
        expect(Math.abs(measures.bounds[1][2] - length)).toBeLessThan(0.005);
      }),
      { numRuns: 12, seed: 20 },
    );
  });

  it('unites a raised mark with the flange it is sunk into', () => {
    const flange = cylinder({ radius: 20, sides: 96, circumscribed: false, from: 0, to: 4 });
    const strokes = textOutlines({ text: 'Tr8x2 LH', height: 4, stroke: 0.8 });
    const mark = strokes.map((outline): Shape => ({ kind: 'prism', outlines: [outline], from: 3.8, to: 4.6 }));
    const measures = fused({ kind: 'union', of: [flange, ...mark] });
    expectSound(measures);
    expect(measures.bounds[1][2]).toBeCloseTo(4.6, 6);
    expect(measures.volume).toBeGreaterThan(latheVolume(flange) + 5);
  });

  it('gives the same bytes from the same recipe, whatever was fused before and in whichever kernel', async () => {
    const recipe = flangedNut({ ...TR8X2, starts: 2 }, 12);
    const first = kernel.fuse(recipe);
    kernel.fuse(flangedNut(TR8X2, 10));
    expect(kernel.fuse(structuredClone(recipe))).toEqual(first);
    expect((await createKernel()).fuse(recipe)).toEqual(first);
  });

  it('gives a mesh that goes in again and comes out of the same volume', () => {
    const mesh = kernel.fuse(flangedNut(TR8X2, 12));
    const again = fused({ kind: 'mesh', mesh });
    expectSound(again);
    expect(again.volume).toBeCloseTo(measureMesh(mesh).volume, 4);
  });

  it('gives values of float32 that a file keeps', () => {
    const { positions } = kernel.fuse(flangedNut(TR8X2, 12));
    expect(positions.every((value) => Math.fround(value) === value && !Object.is(value, -0))).toBe(true);
  });

  it('refuses an open mesh and an empty list', () => {
    const open = { positions: Float64Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0), triangles: Uint32Array.of(0, 1, 2) };
    expect(() => kernel.fuse({ kind: 'mesh', mesh: open })).toThrow(InputError);
    expect(() => kernel.fuse({ kind: 'union', of: [] })).toThrow(InputError);
    const lost: Shape = {
      kind: 'moved',
      by: [Number.NaN, 0, 0],
      shape: cylinder({ radius: 1, sides: 8, circumscribed: false, from: 0, to: 1 }),
    };
    expect(() => kernel.fuse(lost)).toThrow(InputError);
    const clockwise = [
      [0, 0],
      [0, 1],
      [1, 0],
    ] as const;
    expect(() => kernel.fuse({ kind: 'prism', outlines: [clockwise], from: 0, to: 1 })).toThrow(InputError);
    expect(() =>
      kernel.fuse({
        kind: 'lathe',
        sides: 8,
        circumscribed: false,
        contour: [
          [1, 0],
          [0, 1],
          [1, 2],
        ],
      }),
    ).toThrow(InputError);
  });
});

describe('strokes', () => {
  const strokes = (text: string): Shape => ({
    kind: 'strokes',
    outlines: textOutlines({ text, height: 4, stroke: 0.8 }),
    from: -0.2,
    to: 0.6,
  });
  const prisms = (text: string): Shape => ({
    kind: 'union',
    of: textOutlines({ text, height: 4, stroke: 0.8 }).map((one) => ({
      kind: 'prism',
      outlines: [one],
      from: -0.2,
      to: 0.6,
    })),
  });

  it.each(['O', '8', 'Tr10x2', '+0.05', 'i'])('%s joined in the plane is what its prisms are united', (text) => {
    const [joined, united] = [fused(strokes(text)), fused(prisms(text))];
    expect(joined).toMatchObject({ openEdges: 0, repeatedVertexFacets: 0, shells: united.shells });
    expect(joined.leastFacetArea).toBeGreaterThanOrEqual(1e-9);
    expect(Math.abs(joined.volume / united.volume - 1)).toBeLessThan(1e-5);
    for (const end of [0, 1] as const)
      for (const axis of [0, 1, 2] as const) expect(joined.bounds[end][axis]).toBeCloseTo(united.bounds[end][axis], 5);
    expect(joined.facets).toBeLessThanOrEqual(united.facets);
  });

  it('refuses none, and heights that do not rise', () => {
    expect(() => kernel.fuse({ kind: 'strokes', outlines: [], from: 0, to: 1 })).toThrow(/outlines: 0/);
    const { outlines } = strokes('I') as Extract<Shape, { kind: 'strokes' }>;
    expect(() => kernel.fuse({ kind: 'strokes', outlines, from: 1, to: 1 })).toThrow(/to: 1.*must be above 1/);
  });
});

describe('commonVolumes', () => {
  it('measures the overlap of each pose, and exactly 0 apart', () => {
    const block: Shape = { kind: 'prism', outlines: [rectangleOutline({ size: [2, 2] })], from: 0, to: 2 };
    const [half, none, corner, turned] = kernel.commonVolumes(block, block, [
      { by: [1, 0, 0] },
      { by: [0, 0, 2.001] },
      { by: [1, 1, 1] },
      { turn: 45, by: [0, 0, 0.5] },
    ]);
    expect([half, none, corner]).toEqual([4, 0, 1]);
    // a square of side 2 and itself turned by 45°: octagon of inradius 1, area 8·tan 22.5° = 3.31371
    expect(turned).toBeCloseTo(1.5 * 3.31371, 4);
  });
});

describe('surfaced', () => {
  /** A tube's bore as a recipe states it: a thread and a lead-in at either end, which stand out by the same or not. */
  const bored = (over: number): Shape => {
    const thread = nutThread(TR8X2, -over, 12 + over);
    const cone = (contour: Lathe['contour']): Shape => ({
      kind: 'lathe',
      sides: thread.columns,
      circumscribed: thread.circumscribed,
      contour,
      broken: [0],
    });
    const ends = [
      cone([
        [5.5, -1],
        [2.5, 2],
      ]),
      cone([
        [2.5, 10],
        [5.5, 13],
      ]),
    ];
    return {
      kind: 'difference',
      of: [
        cylinder({ radius: 8, sides: 64, circumscribed: false, from: 0, to: 12 }),
        { kind: 'union', of: [{ kind: 'thread', thread }, ...ends] },
      ],
    };
  };
  const shown = (shape: Shape) => {
    const [mesh] = kernel.surfaced([shape]);
    const used = new Set(mesh!.tags);
    const surfaces = mesh!.surfaces.filter((_, i) => used.has(i));
    return { measures: measureMesh(mesh!), surfaces };
  };

  it.each([1, 3])('shows a threaded bore as its core and two lead-ins, standing out by %d mm', (over) => {
    const { measures, surfaces } = shown(bored(over));
    const radius = Math.min(...nutThread(TR8X2, 0, 12).ridge.map(([, r]) => r));
    // frusta from the mouth, 4.5 mm, down to the core, and the core between them, all of 96 sides drawn around
    const share = 96 * Math.tan(Math.PI / 96);
    const lead = 4.5 - radius;
    const frustum = (share * lead * (4.5 ** 2 + 4.5 * radius + radius ** 2)) / 3;
    const core = share * radius ** 2 * (12 - 2 * lead);
    expect(measures.volume).toBeCloseTo(32 * 64 * Math.sin(Math.PI / 32) * 12 - 2 * frustum - core, 2);
    const turned = surfaces.flatMap(({ form, broken }) => (form.kind === 'revolved' ? [{ ...form, broken }] : []));
    expect(turned.map(({ slope, broken }) => [Math.round(slope), broken])).toEqual(
      expect.arrayContaining([
        [-1, true],
        [0, false],
        [1, true],
      ]),
    );
    expect(turned.filter(({ slope }) => slope === 0).map((form) => form.radius)).toContain(radius);
  });
});
