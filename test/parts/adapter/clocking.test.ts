import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockingAt, solveClocking } from '../../../src/parts/adapter/clocking.js';
import { type Disc, discInConvex, discToAny, discToDisc } from '../../../src/parts/adapter/turn-terms.js';
import { rectangleOutline } from '../../../src/solid/outline.js';
import { bruteForce, pairs, pattern, ring, worstClocking } from '../../support/brute-clocking.js';

describe('clocking', () => {
  it('sets four holes on one circle half way between four others', () => {
    // both circles 20 mm: neighbours then stand 45° apart, 20·sin(22.5°) = 7.654 mm, less 2 × 1.7 mm
    const { turn, wall } = solveClocking({
      walls: pairs(ring(4, 20, 0, 1.7), ring(4, 20, 0, 1.7)),
      room: [],
      period: 90,
    });
    expect(Math.abs(turn)).toBe(45);
    expect(wall).toBeCloseTo(7.6537 - 3.4, 3);
  });

  it('is never more than 0.01 mm worse than brute force, on 120 pairs', () => {
    expect(worstClocking(120)).toBeLessThan(0.01);
  });

  it('is never worse within a rectangle either', () => {
    const random = fc.sample(fc.tuple(pattern, pattern), { numRuns: 60, seed: 7 });
    for (const [moving, still] of random) {
      const box = [44, 60] as const;
      const edges = moving.flatMap((disc) => discInConvex(disc, rectangleOutline({ size: box })));
      const { wall } = solveClocking({ walls: [...pairs(moving, still), ...edges], room: [] });
      expect(wall).toBeGreaterThan(bruteForce(moving, still, box) - 0.01);
    }
  });

  it('keeps the room that a head needs, even where a turn without it would leave more wall', () => {
    // one moving hole wants to be opposite the still one, at 180°, but something blocks it there
    const moving: Disc = { at: [10, 0], radius: 1 };
    const walls = [discToDisc(moving, { at: [10, 0], radius: 1 })];
    const room = [discToAny(moving, ([x, y]) => Math.hypot(x + 10, y) - 4)];
    const { turn, wall } = solveClocking({ walls, room });
    // the block ends where the chord is 5 mm: 2·asin(5/20) = 28.955°
    expect(Math.abs(turn)).toBeCloseTo(180 - 28.955, 1);
    expect(wall).toBeCloseTo(20 * Math.sin(((180 - 28.955) / 2 / 180) * Math.PI) - 2, 2);
  });

  it('says what is missing where no turn has room', () => {
    const moving: Disc = { at: [10, 0], radius: 1 };
    const answer = solveClocking({ walls: [], room: [discToAny(moving, ([x, y]) => 10.5 - Math.hypot(x, y))] });
    expect(answer.room).toBeCloseTo(-0.5, 6);
  });

  it('finds room between two patterns of 24 holes', () => {
    const task = { walls: pairs(ring(24, 60, 1, 1.7), ring(24, 58, 5, 1.7)), room: [], period: 15 };
    const { turn } = solveClocking(task);
    expect(clockingAt(task, turn).wall).toBeGreaterThan(0);
  });

  it('judges a given turn', () => {
    const walls = pairs(ring(1, 20, 0, 1), ring(1, 20, 0, 1));
    expect(clockingAt({ walls, room: [] }, 60).wall).toBeCloseTo(10 - 2, 9);
  });
});
