import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Kernel } from '../../src/solid/kernel.js';
import { measureMesh } from '../../src/solid/measure.js';
import { circleOutline, hexagonOutline, type Outline, rectangleOutline } from '../../src/solid/outline.js';
import { cylinder, type Prism, type Shape } from '../../src/solid/recipe.js';
import { textOutlines } from '../../src/solid/text-outlines.js';
import { uprightPlan } from '../../src/solid/upright-plan.js';
import { crossingEdges } from '../support/crossing-edges.js';
import { sharedKernel } from '../support/shared-kernel.js';
import { TR8X2 } from './examples.js';
import { boreOf, byKernel, isByHand } from './random-bores.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const prism = (outline: Outline, from: number, to: number): Prism => ({ kind: 'prism', outlines: [outline], from, to });
const disc = (radius: number, center: readonly [number, number] = [0, 0]) =>
  circleOutline({ radius, sides: 24, center });
const plate = prism(rectangleOutline({ size: [40, 20] }), 0, 2);

function isUpright(shape: Shape): boolean {
  return uprightPlan(shape, (polygons) => kernel.joined(polygons) as [number, number][][]) !== undefined;
}

/** The same solid as the kernel's own, closed, with no more facets. */
function holdAgainstKernel(shape: Shape): void {
  expect(isUpright(shape)).toBe(true);
  const [mine, its] = [kernel.fuse(shape), byKernel(kernel, shape)];
  const [made, cut] = [measureMesh(mine), measureMesh(its)];
  expect(made).toMatchObject({ openEdges: 0, repeatedVertexFacets: 0, shells: cut.shells, bounds: cut.bounds });
  expect(Math.abs(made.volume / cut.volume - 1)).toBeLessThan(1e-7);
  expect(Math.abs(made.area / cut.area - 1)).toBeLessThan(1e-7);
  expect(mine.triangles.length).toBeLessThanOrEqual(its.triangles.length);
  const common = kernel.commonVolumes({ kind: 'mesh', mesh: mine }, { kind: 'mesh', mesh: its }, [{}]);
  expect(Math.abs(common[0]! / cut.volume - 1)).toBeLessThan(1e-6);
}

/** Heights that pieces begin and end at: below, within and over a plate of 2 mm. */
const HEIGHTS = [-1, 0.5, 1, 1.5, 2.5, 4];

interface Piece {
  readonly isCut: boolean;
  readonly shape: Prism;
}

/** Up to four rings in one another, at one of a few places that keep clear of one another. */
const station = fc
  .record({
    rings: fc.array(
      fc.record({
        isCut: fc.boolean(),
        isRound: fc.boolean(),
        span: fc.uniqueArray(fc.constantFrom(...HEIGHTS), { minLength: 2, maxLength: 2 }),
      }),
      { maxLength: 4 },
    ),
    turn: fc.double({ min: 0, max: 60, noNaN: true }),
  })
  .map(
    ({ rings, turn }) =>
      (center: readonly [number, number]): Piece[] =>
        rings.map(({ isCut, isRound, span }, i) => {
          const radius = 4.4 - i;
          const outline = isRound ? disc(radius, center) : hexagonOutline({ acrossFlats: 1.7 * radius, center, turn });
          // what stands on the plate begins in it
          const [from, to] = [Math.min(...span), Math.max(...span)];
          return { isCut, shape: prism(outline, isCut ? from : 0.5, isCut ? to : Math.max(to, 1)) };
        }),
  );

const randomPlate = fc.array(station, { minLength: 1, maxLength: 4 }).map((stations): Shape => {
  const pieces = stations.flatMap((at, i) => at([-15 + 10 * i, 0]));
  const standing = pieces.filter(({ isCut }) => !isCut).map(({ shape }) => shape);
  const cuts = pieces.filter(({ isCut }) => isCut).map(({ shape }) => shape);
  const union: Shape = { kind: 'union', of: [plate, ...standing] };
  return cuts.length === 0 ? union : { kind: 'difference', of: [union, ...cuts] };
});

describe('a body of upright pieces whose outlines keep apart', () => {
  it('is the solid that the kernel makes of it', () => {
    fc.assert(fc.property(randomPlate, holdAgainstKernel), { numRuns: 40 });
  });

  it('carries marks, whose letters have holes', () => {
    const outlines = textOutlines({ text: 'B80 R4', height: 5, stroke: 0.8 });
    const raised: Shape = { kind: 'feature', name: 'mark', shape: { kind: 'strokes', outlines, from: 1.5, to: 3 } };
    holdAgainstKernel({ kind: 'union', of: [plate, raised] });
    holdAgainstKernel({ kind: 'difference', of: [plate, raised] });
  });

  it('keeps holes that its outlines have, and what two have in common', () => {
    const ring: Prism = { kind: 'prism', outlines: [disc(8), disc(5)], from: -2, to: 3 };
    holdAgainstKernel(ring);
    holdAgainstKernel({ kind: 'intersection', of: [plate, ring] });
    holdAgainstKernel({ kind: 'union', of: [plate, ring, prism(disc(3), 1, 5)] });
  });

  const bored = { figures: TR8X2, length: 9, leadIn: 0.5 };
  const column = (center: readonly [number, number], height = 9) => prism(disc(7, center), 1, height);

  it.each(['right', 'left'] as const)('is bored with %s-handed threads, turned and moved', (hand) => {
    const places = [{ by: [-10, 1, 0], turn: 33 }, { by: [10, -1, 0] }] as const;
    const standing = places.map(({ by }) => column([by[0], by[1]]));
    const bores = places.map((at) => boreOf({ ...bored, figures: { ...TR8X2, hand, starts: 2 }, at }));
    const shape: Shape = { kind: 'difference', of: [{ kind: 'union', of: [plate, ...standing] }, ...bores] };
    expect(isUpright(shape)).toBe(true);
    const [mine, its] = [kernel.fuse(shape), byKernel(kernel, shape)];
    const [made, cut] = [measureMesh(mine), measureMesh(its)];
    expect(made).toMatchObject({ openEdges: 0, shells: 1, repeatedVertexFacets: 0, bounds: cut.bounds });
    expect(Math.abs(made.volume / cut.volume - 1)).toBeLessThan(1e-5);
    expect(Math.abs(made.area / cut.area - 1)).toBeLessThan(1e-5);
    expect(mine.triangles.length).toBeLessThanOrEqual(its.triangles.length);
    expect(crossingEdges(mine)).toBe(0);
  });

  const CASES: readonly (readonly [string, Shape])[] = [
    ['pieces that cross the rim', { kind: 'union', of: [plate, prism(disc(4, [18, 0]), 1, 5)] }],
    [
      'pieces that touch the rim',
      { kind: 'difference', of: [plate, prism(rectangleOutline({ size: [4, 20] }), 1, 5)] },
    ],
    [
      "holes in one another's way",
      { kind: 'difference', of: [plate, prism(disc(3), -1, 3), prism(disc(3, [4, 0]), -1, 1)] },
    ],
    [
      'a piece that is turned',
      { kind: 'difference', of: [plate, cylinder({ radius: 2, sides: 24, circumscribed: true, from: -1, to: 3 })] },
    ],
    ['a face all but in another', { kind: 'union', of: [plate, prism(disc(4), 1, 2.0004)] }],
    [
      'a piece that is moved',
      { kind: 'union', of: [plate, { kind: 'moved', shape: prism(disc(3), 1, 4), by: [1, 0, 0] }] },
    ],
  ];

  it.each(CASES)('is left to the kernel with %s', (_, shape) => {
    expect(isUpright(shape)).toBe(false);
    expect(measureMesh(kernel.fuse(shape))).toEqual(measureMesh(byKernel(kernel, shape)));
  });

  it('is left to the kernel where a lead-in ends within a column', () => {
    const standing = { kind: 'union', of: [plate, column([0, 0], 8)] } as const;
    const shape: Shape = { kind: 'difference', of: [standing, boreOf(bored), prism(disc(6.8), 4, 12)] };
    expect(isByHand(kernel.fuse(shape), byKernel(kernel, shape))).toBe(false);
  });
});
