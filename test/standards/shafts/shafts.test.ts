import { describe, expect, it } from 'vitest';
import { slidingFit } from '../../../src/standards/shafts/iso-fit.js';
import { parallelKey } from '../../../src/standards/shafts/parallel-key.js';
import { motorShaft } from '../../../src/standards/shafts/shaft-tolerance.js';

describe('shafts and keys', () => {
  it('knows motor shafts', () => {
    expect(motorShaft(5)).toEqual({ diameter: 5, lower: -0.008 });
    expect(motorShaft(14)).toEqual({ diameter: 14, lower: -0.011, key: [5, 5] });
    expect(() => motorShaft(5.5)).toThrow(/5, 6, 7/);
  });

  // DIN 6885-1, CONFIRMED; the limits of a range belong to the range below
  it('knows parallel keys', () => {
    expect(parallelKey(8)).toEqual({ width: 2, height: 2, shaftDepth: 1.2, hubDepth: 1 });
    expect(parallelKey(8.01).width).toBe(3);
    expect(parallelKey(30)).toEqual({ width: 8, height: 7, shaftDepth: 4, hubDepth: 3.3 });
    expect(() => parallelKey(6)).toThrow(/above 6/);
    expect(() => parallelKey(Number.NaN)).toThrow(/above 6/);
  });

  // ISO 286-2: H7/h6 to 18 mm +18/−11 µm, CONFIRMED
  it('knows the fit H7/h6', () => {
    expect(slidingFit(14)).toEqual({ boreUpper: 0.018, shaftLower: -0.011, mostDiametralClearance: 0.029 });
    expect(slidingFit(3).mostDiametralClearance).toBeCloseTo(0.016, 9);
    expect(() => slidingFit(31)).toThrow(/up to 30/);
  });
});
