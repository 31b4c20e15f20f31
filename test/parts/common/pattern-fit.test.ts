import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { enclosingCircle } from '../../../src/parts/common/enclosing-circle.js';
import { fitPatterns } from '../../../src/parts/common/pattern-fit.js';

const point = fc.tuple(fc.double({ min: -30, max: 30, noNaN: true }), fc.double({ min: -30, max: 30, noNaN: true }));

describe('smallest enclosing circle', () => {
  it('of a 3-4-5 triangle has its hypotenuse for diameter', () => {
    const { center, radius } = enclosingCircle([
      [0, 0],
      [3, 0],
      [0, 4],
    ]);
    expect(radius).toBeCloseTo(2.5, 9);
    expect(center[0]).toBeCloseTo(1.5, 9);
    expect(center[1]).toBeCloseTo(2, 9);
  });

  it('holds all points, and no circle on two or three of them that does is smaller', () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 1, maxLength: 9 }), (points) => {
        const { center, radius } = enclosingCircle(points);
        const reach = (x: number, y: number) => Math.max(...points.map(([u, v]) => Math.hypot(u - x, v - y)));
        expect(reach(center[0], center[1])).toBeLessThanOrEqual(radius + 1e-7);
        // the reach is convex in the centre: if no small step in any direction is shorter, none is
        for (let i = 0; i < 16; i++) {
          const angle = (i * Math.PI) / 8;
          const moved = reach(center[0] + 0.01 * Math.cos(angle), center[1] + 0.01 * Math.sin(angle));
          expect(moved).toBeGreaterThan(radius - 1e-7);
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('patterns as a whole', () => {
  it('shifts a pattern that stands beside the other', () => {
    const { miss, shift } = fitPatterns(
      [
        [10, 0],
        [-10, 0],
      ],
      [
        [10.5, 0],
        [-9.5, 0],
      ],
    );
    expect(miss).toBeCloseTo(0, 6);
    expect(shift).toBeCloseTo(0.5, 6);
  });

  it('shares the difference of two hole circles equally, 15 mm on 19 mm', () => {
    // two holes: each misses by half of the difference of the circles
    const pair = (circle: number) =>
      [
        [circle / 2, 0],
        [-circle / 2, 0],
      ] as const;
    expect(fitPatterns(pair(15), pair(19)).miss).toBeCloseTo(2, 6);
  });

  it('turns until the first hole meets whichever of the others fits best', () => {
    // the same two holes, told in either order: 10 mm along x, 5 mm along y
    const holes = [
      [10, 0],
      [0, 5],
    ] as const;
    for (const theirs of [holes, [holes[1], holes[0]]]) {
      const { miss, shift } = fitPatterns(holes, theirs);
      expect(miss).toBe(0);
      expect(shift).toBeCloseTo(0, 6);
    }
  });

  it('shares a hole that is out of its place by turn and shift: 3 holes at radius 10, one 2° on', () => {
    const at = (degrees: number) =>
      [10 * Math.cos((degrees * Math.PI) / 180), 10 * Math.sin((degrees * Math.PI) / 180)] as const;
    const own = [at(0), at(120), at(240)];
    const theirs = [at(2), at(120), at(240)];
    // brute force over all turns within 5° of the others
    const misses = Array.from({ length: 10_001 }, (_, i) => (((i - 5000) / 1000) * Math.PI) / 180).map((turn) => {
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      return enclosingCircle(own.map(([x, y], i) => [theirs[i]![0] - c * x + s * y, theirs[i]![1] - s * x - c * y]))
        .radius;
    });
    const least = Math.min(...misses);
    expect(least).toBeGreaterThan(0.05);
    expect(fitPatterns(own, theirs).miss).toBeCloseTo(least, 4);
  });

  it('finds a pattern again that was turned and shifted', () => {
    const own = [
      [10, 1],
      [-8, 3],
      [0, -9],
    ] as const;
    const [c, s] = [Math.cos(1.1), Math.sin(1.1)];
    const theirs = own.map(([x, y]) => [c * x - s * y + 0.3, s * x + c * y - 0.2] as const);
    expect(fitPatterns(own, theirs).miss).toBeLessThan(1e-5);
  });
});
