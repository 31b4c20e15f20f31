import { describe, expect, it } from 'vitest';
import { bestWire, measureOverWires, pitchDiameterOverWires, steepLeadDoubt } from '../../src/standards/three-wire.js';

describe('pitchDiameterOverWires', () => {
  // Published constants of the three-wire method: M = d2 + a W − b P.
  it.each([
    ['trapezoidal', 4.8637, 1.866],
    ['acme', 4.9939, 1.9334],
    ['metric-v', 3, 0.866],
  ] as const)('has the constants of the form %s', (form, a, b) => {
    const [pitch, wire, over] = [2, 1, 10];
    expect(pitchDiameterOverWires({ form, pitch, wire, over })).toBeCloseTo(over - a * wire + b * pitch, 3);
  });

  // 8 mm, pitch 2: wire 1.035, M − d2 = 1.303 (hand: 4.8637·1.0353 − 1.866·2 = 1.3033)
  it('measures 1.303 over d2 on 8 x 2 with its best wire', () => {
    const wire = bestWire({ form: 'trapezoidal', pitch: 2 });
    expect(measureOverWires({ form: 'trapezoidal', pitch: 2, wire, pitchDiameter: 7 }) - 7).toBeCloseTo(1.303, 3);
  });

  // Tr8x8(P2): tan λ = 8/(7π) = 0.36378, half its square 0.06617, cos·cot 15° = 3.6049; wire 1.035: 0.2469 mm
  it('allows for the lead angle', () => {
    const flat = { form: 'trapezoidal', pitch: 2, wire: 1.035, pitchDiameter: 7 } as const;
    expect(measureOverWires({ ...flat, lead: 8 }) - measureOverWires(flat)).toBeCloseTo(0.2469, 3);
  });

  it('is undone by measureOverWires', () => {
    for (const lead of [0, 2, 8]) {
      const over = measureOverWires({ flankAngle: 15, pitch: 2, lead, wire: 1, pitchDiameter: 6.9 });
      expect(pitchDiameterOverWires({ flankAngle: 15, pitch: 2, lead, wire: 1, over })).toBeCloseTo(6.9, 9);
    }
  });

  it('refuses what cannot be', () => {
    expect(() => pitchDiameterOverWires({ form: 'acme', pitch: 2, wire: 5, over: 8 })).toThrow(/over/);
    expect(() => pitchDiameterOverWires({ flankAngle: 0, pitch: 2, wire: 1, over: 8 })).toThrow(/flankAngle/);
    expect(() => bestWire({ form: 'acme', pitch: -1 })).toThrow(/pitch/);
  });
});

describe('bestWire', () => {
  it.each([
    ['trapezoidal', 0.518],
    ['acme', 0.516],
    ['metric-v', 0.577],
  ] as const)('is a share of the pitch for %s', (form, share) => {
    expect(Math.abs(bestWire({ form, pitch: 1 }) - share)).toBeLessThan(0.0006);
  });
});

describe('steepLeadDoubt', () => {
  // true size over a straight wire that touches the helicoid, worked out point by point apart from this code [mm]
  it.each([
    ['M8', 30, 1.25, 1.25, 7.188, 0.722, 8.273],
    ['Tr8x2', 15, 2, 2, 7, 1.035, 8.3167],
    ['Tr8x4(P2)', 15, 2, 4, 7, 1.035, 8.3599],
    ['Tr8x8(P2)', 15, 2, 8, 7, 1.035, 8.5196],
    ['Tr12x12(P3)', 15, 3, 12, 10.5, 1.55, 12.7673],
    ['Tr16x16(P4)', 15, 4, 16, 14, 2.07, 17.0393],
  ] as const)('covers what the formula misses on %s', (_, flankAngle, pitch, lead, d2, wire, over) => {
    const found = pitchDiameterOverWires({ flankAngle, pitch, lead, wire, over });
    const doubt = steepLeadDoubt({ wire, lead, pitchDiameter: found });
    expect(d2 - found).toBeGreaterThan(-0.0002);
    expect(d2 - found).toBeLessThan(doubt + 0.0002);
  });
});
