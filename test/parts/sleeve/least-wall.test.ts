import { describe, expect, it } from 'vitest';
import type { Clamp } from '../../../src/parts/common/clamp.js';
import { leastSleeveWall } from '../../../src/parts/sleeve/least-wall.js';
import type { SleevePlan } from '../../../src/parts/sleeve/plan.js';

/** One M3 far enough from everything: bore 4 mm, outline 20 mm, seats 6 mm from the middle. */
const clamp = (heights: readonly number[], more: Partial<Clamp> = {}): Clamp => ({
  screw: 'M3',
  offset: 10,
  heights,
  hole: 3.4,
  head: 6,
  headSeat: 6,
  nut: 6,
  nutSeat: 6,
  washers: false,
  screwLength: 16,
  ...more,
});
const bore = (depth: number, diameter = 8) => ({ depth, bore: { form: 'round', diameter } as const });
const SLEEVE: SleevePlan = {
  outside: 50,
  length: 30,
  chamfer: 0.5,
  slit: 1.5,
  bores: [bore(12), bore(13)],
  step: 1,
  clamps: [clamp([7]), clamp([30 - 7])],
};
const least = (changes: Partial<SleevePlan> = {}) => leastSleeveWall({ ...SLEEVE, ...changes });

describe('the thinnest wall of a sleeve by hand', () => {
  it('lies between a pocket and its own end: 7 − 3 mm, at either end', () => {
    expect(least()).toEqual({ where: 'pocket to the end', size: 4 });
    expect(least({ clamps: [clamp([7]), clamp([30 - 6.5])] }).size).toBeCloseTo(3.5, 9);
    expect(least({ clamps: [clamp([6.5]), clamp([30 - 7])] }).size).toBeCloseTo(3.5, 9);
  });

  it('lies between two pockets of one end, 9 − 6 mm', () => {
    const two = clamp([30 - 7, 30 - 16]);
    expect(least({ bores: [bore(8), bore(17)], clamps: [clamp([7]), two] })).toEqual({
      where: 'between the pockets',
      size: expect.closeTo(3, 9),
    });
  });

  it('is the web between its bores: 30 − 12 − 15 mm', () => {
    expect(least({ bores: [bore(12), bore(15)] })).toEqual({ where: 'web between the bores', size: 3 });
  });

  it('lies between a seat and half the slit: 2 − 0.75 mm', () => {
    const shallow = clamp([7], { headSeat: 2, offset: 12 });
    expect(least({ clamps: [shallow, SLEEVE.clamps[1]!] }).size).toBeCloseTo(1.25, 9);
  });

  it('of a bush is its wall, or its length where that is less', () => {
    const bush = { bores: [bore(12, 6)] as const, length: 12, clamps: [], outside: 8 };
    expect(least(bush)).toEqual({ where: 'bore to outside', size: 1 });
    expect(least({ ...bush, bores: [bore(0.9, 6)], length: 0.9 })).toEqual({ where: 'length', size: 0.9 });
  });
});
