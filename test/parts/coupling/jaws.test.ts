import { describe, expect, it } from 'vitest';
import { type JawPlan, slotLevels } from '../../../src/parts/coupling/jaws.js';

const plan = (fillet: number): JawPlan => ({
  count: 3,
  height: 10,
  outer: 15,
  inner: 7,
  halfSlot: 2.5,
  hollow: 0,
  draft: 0,
  fillet,
  bevel: 0.5,
  recess: 0.4,
});

describe('the fillet between flank and floor', () => {
  it.each([0.2, 0.5, 1, 1.5, 2, 5])('of %d mm is drawn within 0.01 mm of its arc', (fillet) => {
    const arc = slotLevels(plan(fillet)).filter(([z]) => z <= fillet);
    expect(arc[0]).toEqual([0, -fillet]);
    expect(arc.at(-1)).toEqual([fillet, 0]);
    // its middle stands over the floor by the fillet, as far from the flank
    const off = ([z, aside]: readonly [number, number]) => Math.hypot(fillet - z, fillet + aside);
    for (const corner of arc) expect(off(corner)).toBeCloseTo(fillet, 9);
    const middles = arc.slice(1).map(([z, aside], i) => [(z + arc[i]![0]) / 2, (aside + arc[i]![1]) / 2] as const);
    for (const middle of middles) expect(fillet - off(middle)).toBeLessThan(0.0101);
    expect(arc.length).toBeGreaterThanOrEqual(5);
  });

  it('is none where none is wanted', () => {
    expect(slotLevels(plan(0))[0]).toEqual([0, 0]);
  });
});
