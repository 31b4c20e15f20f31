import { describe, expect, it } from 'vitest';
import { flankOverhangStep, largestLayer } from '../../../src/mechanics/print/flank-overhang.js';
import { InputError } from '../../../src/units/faults.js';

// Table of common practice, arithmetic; a V thread's lead angle is about 3°.
describe('overhang table', () => {
  it.each([
    ['8 mm, P2, 1 start', 15, 5.2, 0.35, 0.71, 0.09],
    ['8 mm, P2, 2 starts', 15, 10.3, 0.31, 0.62, 0.1],
    ['8 mm, P2, 4 starts', 15, 20.0, 0.22, 0.44, 0.14],
    ['12 mm, P3', 15, 5.2, 0.35, 0.71, 0.09],
    ['V thread', 30, 3, 0.17, 0.35, 0.18],
  ])('%s', (_, flankAngle, leadAngle, fine, coarse, layer) => {
    expect(Math.abs(flankOverhangStep({ layer: 0.1, flankAngle, leadAngle }) - fine)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(flankOverhangStep({ layer: 0.2, flankAngle, leadAngle }) - coarse)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(largestLayer({ step: 0.315, flankAngle, leadAngle }) - layer)).toBeLessThanOrEqual(0.0051);
  });

  it('0.2 mm layers on a single start pass 1.1 lines of 0.42; four starts of them stay below', () => {
    expect(flankOverhangStep({ layer: 0.2, flankAngle: 15, leadAngle: 5.2 }) / 0.42).toBeGreaterThan(1.1);
    expect(flankOverhangStep({ layer: 0.2, flankAngle: 15, leadAngle: 20 }) / 0.42).toBeLessThan(1.1);
  });

  it('largestLayer undoes the step', () => {
    const flank = { flankAngle: 14.5, leadAngle: 7 };
    expect(flankOverhangStep({ ...flank, layer: largestLayer({ ...flank, step: 0.3 }) })).toBeCloseTo(0.3, 12);
  });
});

it('refuses values outside their ranges', () => {
  expect(() => flankOverhangStep({ layer: 0, flankAngle: 15, leadAngle: 5 })).toThrow(/^layer: /);
  expect(() => flankOverhangStep({ layer: 0.1, flankAngle: 0, leadAngle: 0 })).toThrow(InputError);
  expect(() => flankOverhangStep({ layer: 0.1, flankAngle: 15, leadAngle: 90 })).toThrow(/^leadAngle: /);
});
