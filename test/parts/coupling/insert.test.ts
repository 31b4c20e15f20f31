import { describe, expect, it } from 'vitest';
import { type InsertPlan, lobeOutline } from '../../../src/parts/coupling/insert.js';

const BARRELLED: InsertPlan = {
  lobes: 4,
  halfWidth: 10.121,
  barrel: 1.2,
  ring: 18,
  reach: 38,
  height: 20,
  hole: 0,
  middle: 28.553,
};

describe('a lobe of an insert', () => {
  it('is as wide as it says where its barrel is widest, between the ends of its sides too', () => {
    const widest = lobeOutline(BARRELLED).filter(([x]) => Math.abs(x - BARRELLED.middle) < 1e-9);
    expect(widest.map(([, y]) => y)).toEqual([-10.121, 10.121]);
    expect(Math.max(...lobeOutline(BARRELLED).map(([, y]) => y))).toBe(10.121);
  });

  it('falls off to both ends by a parabola: a quarter of it half way', () => {
    // half way from the middle to the reach, 28.553 + 9.447 / 2
    const [, y] = lobeOutline(BARRELLED).find(([x, side]) => side > 0 && Math.abs(x - 33.2765) < 1e-9)!;
    expect(y).toBeCloseTo(10.121 - 1.2 / 4, 9);
  });

  it('has straight sides without a barrel', () => {
    expect(lobeOutline({ ...BARRELLED, barrel: 0 })).toHaveLength(4);
  });
});
