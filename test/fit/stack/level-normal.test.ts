import { describe, expect, it } from 'vitest';
import { levelNormalBelow, levelNormalDensity } from '../../../src/fit/stack/level-normal.js';

// Φ(1) = 0.84134, Φ(2) = 0.97725, φ(0) = 0.39894, φ(1) = 0.24197, φ(2) = 0.05399, from the table of the normal distribution

describe('a level variable with a normal one, by the table', () => {
  it('is normal where nothing is level', () => {
    expect(levelNormalBelow(0.2, 0, 0.2)).toBeCloseTo(0.84134, 4);
    expect(levelNormalDensity(0.2, 0, 0.2)).toBeCloseTo(0.24197 / 0.2, 4);
    expect(levelNormalDensity(-0.4, 0, 0.2)).toBeCloseTo(0.05399 / 0.2, 4);
  });

  it('is level where nothing, or hardly anything, is normal', () => {
    for (const half of [2, -2])
      for (const sigma of [0, 0.002]) {
        expect([-2.1, -1, 0, 1.5, 2.1].map((t) => levelNormalBelow(t, half, sigma))).toEqual([0, 0.25, 0.5, 0.875, 1]);
        expect([-2.1, -1.9, 0, 1.9, 2.1].map((t) => levelNormalDensity(t, half, sigma))).toEqual([
          0, 0.25, 0.25, 0.25, 0,
        ]);
      }
  });

  it('of ±1 and 1 are what the table gives: (Φ(t + 1) − Φ(t − 1))/2 dense', () => {
    expect(levelNormalDensity(0, 1, 1)).toBeCloseTo((0.84134 - 0.15866) / 2, 4);
    expect(levelNormalDensity(1, 1, 1)).toBeCloseTo((0.97725 - 0.5) / 2, 4);
    expect(levelNormalDensity(-1, -1, 1)).toBeCloseTo((0.97725 - 0.5) / 2, 4);
    // G(2) − G(0) = 2·0.97725 + 0.05399 − 0.39894
    expect(levelNormalBelow(1, 1, 1)).toBeCloseTo((2 * 0.97725 + 0.05399 - 0.39894) / 2, 4);
  });

  it('of other widths are the same by their scale', () => {
    expect(levelNormalDensity(0.3, 0.3, 0.3)).toBeCloseTo(levelNormalDensity(1, 1, 1) / 0.3, 6);
    expect(levelNormalBelow(0.3, 0.3, 0.3)).toBeCloseTo(levelNormalBelow(1, 1, 1), 6);
  });

  it('is dense by as much as its share rises', () => {
    for (const [half, sigma] of [
      [1, 0.3],
      [0.4, 2],
      [0, 0.5],
    ] as const)
      for (const t of [-1.2, -0.3, 0.1, 0.9])
        expect(levelNormalDensity(t, half, sigma)).toBeCloseTo(
          (levelNormalBelow(t + 0.001, half, sigma) - levelNormalBelow(t - 0.001, half, sigma)) / 0.002,
          3,
        );
  });

  it('is a step where it has no width at all, and half of it lies below', () => {
    expect([-1e-9, 0, 1e-9].map((t) => levelNormalBelow(t, 0, 0))).toEqual([0, 0.5, 1]);
    expect([-1e-9, 0, 1e-9].map((t) => levelNormalDensity(t, 0, 0))).toEqual([0, 0, 0]);
  });
});
