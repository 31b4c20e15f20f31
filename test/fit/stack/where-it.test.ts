import { describe, expect, it } from 'vitest';
import { normalBelow, normalDensity } from '../../../src/fit/stack/normal.js';
import { whereIt } from '../../../src/fit/stack/where-it.js';

/** Where it is found, and how often was asked. */
function searched(
  rising: (x: number) => number,
  slope: (x: number) => number,
  value: number,
  [from, to]: readonly [number, number] = [0, 1],
) {
  let asked = 0;
  const counted = (x: number) => {
    asked += 1;
    return rising(x);
  };
  const found = whereIt(counted, slope, value, from, to);
  return { found, asked };
}
const straight = (x: number) => x;

describe('where a rising function takes a value', () => {
  it.each([
    [0.3, [0, 1]],
    [0.3, [-1, 1]],
    [-0.7, [-1, 1]],
    [1.4, [1, 2]],
    [16.1, [10, 20]],
  ] as const)(
    '%f on a line is found between a first step and two that close in from either side: %j',
    (value, ends) => {
      const { found, asked } = searched(straight, () => 1, value, ends);
      expect(Math.abs(found - value)).toBeLessThan(1e-6);
      expect(asked).toBe(3);
    },
  );

  it('on a curve is found in far fewer rounds than the 24 that halving takes', () => {
    for (const [value, z] of [
      [0.84134, 1],
      [0.97725, 2],
      [0.15866, -1],
      [0.025, -1.96],
    ] as const) {
      const { found, asked } = searched(normalBelow, normalDensity, value, [-7, 7]);
      expect(Math.abs(found - z)).toBeLessThan(1e-4);
      expect(asked).toBeLessThan(12);
    }
  });

  it.each([
    ['is flat', () => 0],
    ['leads the wrong way', () => -1],
    ['leads out', () => 0.001],
  ])('is found by halving where its slope %s: 2⁻²⁰ is below a millionth', (_, slope) => {
    for (const value of [0.3, 0.8]) {
      const { found, asked } = searched(straight, slope, value);
      expect(Math.abs(found - value)).toBeLessThan(1e-6);
      expect(asked).toBeLessThanOrEqual(20);
    }
  });

  it('is found where its slope leads too slowly on, by a halving in every other round', () => {
    const { found, asked } = searched(straight, () => 1e6, 0.3);
    expect(Math.abs(found - 0.3)).toBeLessThan(1e-6);
    expect(asked).toBeLessThanOrEqual(41);
  });

  it('of a step is the step, and of what it never takes the nearer end', () => {
    expect(
      searched(
        (x) => (x > 0.3 ? 1 : 0),
        () => 0,
        0.5,
      ).found,
    ).toBeCloseTo(0.3, 6);
    expect(searched(straight, () => 1, -1).found).toBeCloseTo(0, 6);
    expect(searched(straight, () => 1, 2).found).toBeCloseTo(1, 6);
  });

  it('is given up where numbers lie further apart than it is asked for', () => {
    const { found, asked } = searched(straight, () => 0, 1e12 + 0.3, [1e12, 1e12 + 1]);
    expect(Math.abs(found - 1e12 - 0.3)).toBeLessThan(0.001);
    expect(asked).toBeLessThanOrEqual(100);
  });
});
