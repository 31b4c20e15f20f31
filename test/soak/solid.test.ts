import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import { mateThreads, NO_COMMON_VOLUME } from '../../src/solid/mate.js';
import { measureMesh } from '../../src/solid/measure.js';
import type { Shape } from '../../src/solid/recipe.js';
import { sweepThread } from '../../src/solid/thread-sweep.js';
import { threadVolume } from '../../src/solid/volume.js';
import { nutThread, screwThread, TR8X2 } from '../solid/examples.js';
import { holdAgainstKernel, randomBore } from '../solid/random-bores.js';
import { randomNut, randomThread, tightMate } from '../solid/random-nuts.js';
import { commonOverTheTurn, sameVolume } from '../support/whole-turn.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

describe('a long hunt', () => {
  it('finds no nut that is open, split, or off its size', () => {
    fc.assert(
      fc.property(randomNut, ({ shape, reach, length }) => {
        const measures = measureMesh(kernel.fuse(shape));
        expect(measures).toMatchObject({ openEdges: 0, repeatedVertexFacets: 0, shells: 1 });
        expect(measures.leastFacetArea).toBeGreaterThanOrEqual(1e-9);
        expect(Math.abs(measures.bounds[1][0] - reach)).toBeLessThan(0.005);
        expect(Math.abs(measures.bounds[1][2] - length)).toBeLessThan(0.005);
      }),
      { numRuns: 1500 },
    );
  });

  it('finds no bore put in by hand that is not the one that the kernel cuts', () => {
    fc.assert(
      fc.property(randomBore, (bored) => holdAgainstKernel(kernel, bored)),
      { numRuns: 80 },
    );
  });

  it('finds no thread whose volume is off its section integral by 0.02 %', () => {
    fc.assert(
      fc.property(randomThread, fc.double({ min: 1, max: 5, noNaN: true }), (figures, pitches) => {
        for (const thread of [
          nutThread(figures, 0, pitches * figures.pitch),
          screwThread(figures, 0, pitches * figures.pitch),
        ]) {
          const measures = measureMesh(sweepThread(thread));
          expect(measures).toMatchObject({ openEdges: 0, shells: 1 });
          expect(Math.abs(measures.volume / threadVolume(thread, thread) - 1)).toBeLessThan(2e-4);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('finds no screw that touches its nut at working clearances', () => {
    fc.assert(
      fc.property(randomThread, (random) => {
        const figures = { ...random, diametralClearance: 0.3, axialClearance: Math.min(0.1, 0.15 * random.pitch) };
        const play = 0.3 * Math.tan((figures.flankAngle * Math.PI) / 180) + figures.axialClearance;
        const threads = { nut: nutThread(figures, 0, 1), screw: screwThread(figures, 0, 1) };
        expect(mateThreads(kernel, { ...threads, play, length: figures.pitch })).toBeLessThan(NO_COMMON_VOLUME);
      }),
      { numRuns: 300 },
    );
  });

  it('finds no pair of threads of which one column says other than the whole turn', () => {
    fc.assert(
      fc.property(randomThread, fc.double({ min: 0.005, max: 0.1, noNaN: true }), (figures, tight) => {
        const mate = tightMate(figures, 1, tight * figures.pitch);
        const whole = commonOverTheTurn(kernel, mate);
        expect(Math.abs(mateThreads(kernel, mate) - whole)).toBeLessThan(sameVolume(whole, mate));
      }),
      { numRuns: 150 },
    );
  });
});

it('a whole turn of the screw along its helix never touches the nut', () => {
  for (const starts of [1, 4]) {
    const figures = { ...TR8X2, starts };
    const ring: Shape = {
      kind: 'lathe',
      sides: 96,
      circumscribed: true,
      contour: [
        [6, 0],
        [6, 4],
      ],
    };
    const nut: Shape = { kind: 'difference', of: [ring, { kind: 'thread', thread: nutThread(figures, -1, 5) }] };
    const screw: Shape = { kind: 'thread', thread: screwThread(figures, -10, 6) };
    const poses = Array.from({ length: 96 }, (_, i) => ({
      turn: i * 3.7,
      by: [0, 0, (2 * starts * i * 3.7) / 360 - (i * 3.7 > 180 ? 2 * starts : 0)] as const,
    }));
    expect(Math.max(...kernel.commonVolumes(nut, screw, poses))).toBe(0);
  }
});
