import { beforeAll, describe, expect, it } from 'vitest';
import type { Kernel } from '../../src/solid/kernel.js';
import { measureMesh } from '../../src/solid/measure.js';
import { circleOutline } from '../../src/solid/outline.js';
import { cylinder, type Shape } from '../../src/solid/recipe.js';
import { sweepThread } from '../../src/solid/thread-sweep.js';
import { latheVolume, prismVolume, threadVolume } from '../../src/solid/volume.js';
import { InputError } from '../../src/units/faults.js';
import { sharedKernel } from '../support/shared-kernel.js';
import { narrowest, nutThread, screwThread, type ThreadFigures, TR8X2, widest } from './examples.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

/** Difference in percent. */
function off(value: number, expected: number): number {
  return 100 * Math.abs(value / expected - 1);
}

describe('prismVolume and latheVolume', () => {
  it('agree with geometry', () => {
    const outer = circleOutline({ radius: 5, sides: 6, circumscribed: true });
    const hole = circleOutline({ radius: 1, sides: 4 });
    // hexagon over flats 10: 2·√3·5² = 86.6025; square over corners 2: 2
    expect(prismVolume({ outlines: [outer, hole], from: -1, to: 2 })).toBeCloseTo(3 * (86.60254 - 2), 4);
    // square frustum, half widths 3 and 1, height 2: (36 + 12 + 4)/3·2
    expect(
      latheVolume({
        sides: 4,
        circumscribed: true,
        contour: [
          [3, 0],
          [1, 2],
        ],
      }),
    ).toBeCloseTo(104 / 3, 12);
    // pyramid over a square of corner distance 1, height 3: 2·3/3
    expect(
      latheVolume({
        sides: 4,
        circumscribed: false,
        contour: [
          [1, 0],
          [0, 3],
        ],
      }),
    ).toBeCloseTo(2, 12);
  });
});

describe('threadVolume', () => {
  it('is a prism for a thread without depth', () => {
    const plain = {
      ...nutThread(TR8X2, 0, 10),
      ridge: [
        [0, 4],
        [1, 4],
      ] as const,
    };
    expect(threadVolume(plain, { from: 0, to: 10 })).toBeCloseTo(10 * 96 * 16 * Math.tan(Math.PI / 96), 9);
  });

  const grid: ThreadFigures[] = [];
  for (const starts of [1, 2, 3, 4, 6]) {
    for (const flankAngle of [3, 14.5, 15, 30, 45]) {
      for (const [major, pitch] of [
        [8, 2],
        [20, 4],
        [60, 12],
        [3, 0.5],
      ] as const) {
        const hand = starts % 2 === 0 ? ('left' as const) : ('right' as const);
        if (pitch * starts <= 2 * major) grid.push({ ...TR8X2, starts, flankAngle, major, pitch, hand });
      }
    }
  }

  it(`agrees with the swept mesh within 0.02 % over ${grid.length} threads, both as cutter and as screw`, () => {
    for (const figures of grid) {
      for (const thread of [nutThread(figures, 0, 2.5 * figures.pitch), screwThread(figures, 0, 2.5 * figures.pitch)]) {
        const { volume } = measureMesh(sweepThread(thread));
        expect(off(volume, threadVolume(thread, thread)), JSON.stringify(figures)).toBeLessThan(0.02);
      }
    }
  });

  it('agrees with the kernel within 0.02 % with conical openings at both ends', () => {
    for (const thinned of grid.filter((_, i) => i % 4 === 0)) {
      const figures = { ...thinned, columns: 48 };
      const { pitch, columns } = figures;
      const length = 4 * pitch;
      const thread = nutThread(figures, -pitch, length + pitch);
      const [top, foot] = [widest(thread) * 1.02, narrowest(thread) * 0.98];
      const depth = Math.min(top - foot, 1.5 * pitch);
      const openings = [
        [
          [top, 0],
          [foot, depth],
        ],
        [
          [foot, length - depth],
          [top, length],
        ],
      ] as const;
      const cone = { kind: 'lathe', sides: columns, circumscribed: true } as const;
      const opened: Shape = {
        kind: 'union',
        of: [
          { kind: 'thread', thread },
          { ...cone, contour: [[top, -pitch / 2], ...openings[0]] },
          { ...cone, contour: [...openings[1], [top, length + pitch / 2]] },
        ],
      };
      const slab = cylinder({ radius: 2 * top, sides: 4, circumscribed: true, from: 0, to: length });
      const measured = kernel.volume({ kind: 'intersection', of: [opened, slab] });
      expect(off(measured, threadVolume(thread, { from: 0, to: length, openings }))).toBeLessThan(0.02);
    }
  });

  it('sees the diagonals: the cutter is larger and the screw smaller than the ruled surface', () => {
    const thread = nutThread({ ...TR8X2, starts: 4, columns: 24 }, 0, 8);
    const inside = threadVolume(thread, thread);
    const outside = threadVolume({ ...thread, airSide: 'outside' }, thread);
    expect(measureMesh(sweepThread(thread)).volume).toBeCloseTo(inside, 3);
    expect(measureMesh(sweepThread({ ...thread, airSide: 'outside' })).volume).toBeCloseTo(outside, 3);
    // by hand: 2·8·starts·sin(15°)·2·Δr²/12, Δr = 1.05/cos(7.5°)·… both flanks
    const depth = (widest(thread) - narrowest(thread)) / Math.cos(Math.PI / 24);
    expect(inside - outside).toBeCloseTo((2 * 8 * 4 * Math.sin(Math.PI / 12) * 2 * depth ** 2) / 12, 9);
  });

  it('refuses planes in the wrong order', () => {
    expect(() => threadVolume(nutThread(TR8X2, 0, 8), { from: 4, to: 4 })).toThrow(InputError);
  });
});
