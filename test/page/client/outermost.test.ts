import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outermost } from '../../../page/client/outermost.js';

/** Corners of an upright ring of 96 sides, radius 10, between two heights, with a thread's worth of corners inside. */
function ring(): number[] {
  return [-3, 0, 4, 12].flatMap((z) =>
    Array.from({ length: 96 }, (_, i) => (2 * Math.PI * i) / 96).flatMap((turn) => {
      const radius = z === 0 || z === 4 ? 6 : 10;
      return [radius * Math.cos(turn), radius * Math.sin(turn), z];
    }),
  );
}

function reach(corners: ArrayLike<number>, [x, y, z]: readonly number[]): number {
  let most = -Infinity;
  for (let i = 0; i < corners.length; i += 3)
    most = Math.max(most, x! * corners[i]! + y! * corners[i + 1]! + z! * corners[i + 2]!);
  return most;
}

describe('outermost corners', () => {
  it('are few, and reach as far as all of them along the axes', () => {
    const some = outermost(ring());
    expect(some.length / 3).toBeLessThanOrEqual(64);
    for (const way of [
      [1, 0, 0],
      [0, -1, 0],
      [0, 0, 1],
      [0, 0, -1],
    ])
      expect(reach(some, way)).toBeCloseTo(reach(ring(), way), 5);
  });

  it('reach within half a percent of all of them in any way', () => {
    const [all, some] = [ring(), outermost(ring())];
    const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
    fc.assert(
      fc.property(angle, angle, (turn, tilt) => {
        const way = [Math.sin(tilt) * Math.cos(turn), Math.sin(tilt) * Math.sin(turn), Math.cos(tilt)];
        expect(reach(some, way)).toBeGreaterThan(reach(all, way) - 0.005 * 16);
      }),
    );
  });
});
