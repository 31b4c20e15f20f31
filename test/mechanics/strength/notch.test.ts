import { describe, expect, it } from 'vitest';
import { rootNotch } from '../../../src/mechanics/strength/notch.js';

const notch = (fillet: number) => rootNotch({ fillet, thickness: 1 });

describe('the root of a shoulder', () => {
  // by hand from the tables, D/d = 3: h/r = 2: 2.359 − 2.170·0.667 + 0.471·0.444 + 0.341·0.296; h/r = 4 and 10 alike
  it('bears in bending what the tables say', () => {
    expect(notch(0.5)).toBeCloseTo(1.222, 3);
    expect(notch(0.25)).toBeCloseTo(1.464, 3);
    expect(notch(0.1)).toBeCloseTo(1.919, 2);
    // h/r = 1, by the table of blunt ones: 1.976 − 1.925·0.667 + 0.906·0.444 + 0.043·0.296; that of sharp ones gives 1.045
    expect(notch(1)).toBeCloseTo(1.108, 3);
  });

  // another fit of the same charts, D/d = 3: K = 0.907·(r/d)^(−1/3)
  it.each([0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5])('is within 7 %% of another fit at a fillet of %d', (fillet) => {
    expect(Math.abs(notch(fillet) / (0.907 * fillet ** (-1 / 3)) - 1)).toBeLessThan(0.07);
  });

  // handbook rule for plastics: 1.5 to 2 below half the thickness
  it('counts between 1.2 and 2 below half the thickness, no more for a sharp corner, and ever less for a rounder one', () => {
    expect(notch(0)).toBe(2);
    const all = Array.from({ length: 60 }, (_, i) => i / 20);
    for (const fillet of all.slice(1)) expect(notch(fillet)).toBeLessThanOrEqual(notch(fillet - 0.05) + 0.01);
    for (const fillet of all) expect(notch(fillet)).toBeGreaterThanOrEqual(1);
  });

  it('hangs on the fillet over the thickness alone', () => {
    expect(rootNotch({ fillet: 1, thickness: 4 })).toBeCloseTo(notch(0.25), 12);
    expect(() => rootNotch({ fillet: -1, thickness: 4 })).toThrow(/fillet/);
    expect(() => rootNotch({ fillet: 1, thickness: 0 })).toThrow(/thickness/);
  });
});
