import { describe, expect, it } from 'vitest';
import { slidingFit } from '../../../src/standards/shafts/iso-fit.js';
import { MOTOR_FRAMES, motorFrame } from '../../../src/standards/shafts/motor-frame.js';
import { parallelKey } from '../../../src/standards/shafts/parallel-key.js';
import { motorShaft } from '../../../src/standards/shafts/shaft-tolerance.js';

describe('motorFrame', () => {
  // NEMA ICS 16, CONFIRMED (frame 14: common practice); the circle is the square's diagonal
  it.each([
    [17, 31, 22, 5],
    [23, 47.14, 38.1, 6.35],
    [34, 69.6, 73.03, 9.525],
  ])('frame %d', (frame, square, pilot, shaft) => {
    expect(motorFrame(frame)).toMatchObject({ boltSquare: square, pilot, shaft });
  });

  it('has circles on the diagonal of the square', () => {
    for (const frame of MOTOR_FRAMES) {
      const { boltSquare, boltCircle } = motorFrame(frame);
      expect(Math.abs(boltCircle - boltSquare * Math.SQRT2)).toBeLessThan(0.04);
    }
    expect(() => motorFrame(18)).toThrow(/14, 17, 23, 34/);
  });
});

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
