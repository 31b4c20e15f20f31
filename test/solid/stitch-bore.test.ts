import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Kernel } from '../../src/solid/kernel.js';
import { measureMesh } from '../../src/solid/measure.js';
import { cylinder, type Shape } from '../../src/solid/recipe.js';
import { crossingEdges } from '../support/crossing-edges.js';
import { sharedKernel } from '../support/shared-kernel.js';
import { nutThread, TR8X2, widest } from './examples.js';
import { blockFor, boreOf, byKernel, holdAgainstKernel, isByHand, randomBore } from './random-bores.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

describe('a threaded bore put in by hand', () => {
  it('is the solid that the kernel cuts, with no more facets', () => {
    fc.assert(
      fc.property(randomBore, (bored) => {
        holdAgainstKernel(kernel, bored);
      }),
      { numRuns: 20 },
    );
  });

  it('has no two facets that cross', () => {
    for (const hand of ['right', 'left'] as const) {
      const bored = { figures: { ...TR8X2, hand, starts: 4 }, length: 12, leadIn: 0.5 };
      const mesh = kernel.fuse({ kind: 'difference', of: [blockFor(bored), boreOf(bored)] });
      expect(crossingEdges(mesh)).toBe(0);
    }
  });

  it('stands where its moves put it, several in one body', () => {
    const bored = { figures: TR8X2, length: 9, leadIn: 0.5 };
    const places = [
      { by: [-4, 7, 0], turn: 30 },
      { by: [10, 7, 0], turn: 77 },
    ] as const;
    const plate: Shape = { kind: 'union', of: places.map(({ by }) => blockFor(bored, by)) };
    const shape: Shape = { kind: 'difference', of: [plate, ...places.map((at) => boreOf({ ...bored, at }))] };
    const [mine, its] = [kernel.fuse(shape), byKernel(kernel, shape)];
    expect(isByHand(mine, its)).toBe(true);
    const [made, cut] = [measureMesh(mine), measureMesh(its)];
    expect(made.openEdges).toBe(0);
    expect(made.volume).toBeCloseTo(cut.volume, 3);
    expect(made.bounds).toEqual(cut.bounds);
    const common = kernel.commonVolumes({ kind: 'mesh', mesh: mine }, { kind: 'mesh', mesh: its }, [{}]);
    expect(common[0]).toBeCloseTo(cut.volume, 2);
  });

  const bored = { figures: TR8X2, length: 12, leadIn: 0.5 };
  const wide = widest(nutThread(TR8X2, 0, 1));
  const pin = (x: number, radius: number, from = -1, to = 13): Shape => ({
    kind: 'moved',
    by: [x, 0, 0],
    shape: cylinder({ radius, sides: 24, circumscribed: true, from, to }),
  });
  const CUTS: readonly (readonly [string, Shape])[] = [
    ['a hole that opens into the thread', pin(wide, 0.6)],
    ['a pocket in a mouth', pin(wide + 0.5, 0.4, 11.5)],
    ['a bore that takes the first turns', pin(0, wide - 1, -1, 4)],
    ['a hole within the depth of the thread', pin(wide - 0.5, 0.1)],
    [
      'a slit',
      {
        kind: 'prism',
        outlines: [
          [
            [0, -0.5],
            [20, -0.5],
            [20, 0.5],
            [0, 0.5],
          ],
        ],
        from: -1,
        to: 13,
      },
    ],
  ];

  it.each(CUTS)('is left to the kernel beside %s', (_, cut) => {
    const shape: Shape = { kind: 'difference', of: [blockFor(bored), boreOf(bored), cut] };
    expect(isByHand(kernel.fuse(shape), byKernel(kernel, shape))).toBe(false);
  });

  it('is left to the kernel where its lead-ins meet, and beside a cut in the body before', () => {
    const short = { ...bored, length: 2 };
    const meeting: Shape = { kind: 'difference', of: [blockFor(short), boreOf(short)] };
    expect(isByHand(kernel.fuse(meeting), byKernel(kernel, meeting))).toBe(false);
    const holed: Shape = { kind: 'difference', of: [blockFor(bored), pin(wide - 0.5, 0.1)] };
    const shape: Shape = { kind: 'difference', of: [holed, boreOf(bored)] };
    expect(isByHand(kernel.fuse(shape), byKernel(kernel, shape))).toBe(false);
  });

  it('is put in beside holes that keep off it', () => {
    const shape: Shape = { kind: 'difference', of: [blockFor(bored), boreOf(bored), pin(wide + 1.5, 0.4)] };
    const [mine, its] = [kernel.fuse(shape), byKernel(kernel, shape)];
    expect(isByHand(mine, its)).toBe(true);
    expect(measureMesh(mine).volume).toBeCloseTo(measureMesh(its).volume, 3);
  });
});
