import { expect, it } from 'vitest';
import { forcedScrewLoad } from '../../../src/mechanics/bolt/forced-screw.js';
import { preloadFromTorque, pressureUnderHead } from '../../../src/mechanics/bolt/preload.js';
import { pullOutForce } from '../../../src/mechanics/bolt/pull-out.js';

it('pulls an insert out by half of the cylinder around it', () => {
  // by hand: 0.5 · π · 4 mm · 6 mm · 20 MPa = 754 N
  expect(pullOutForce({ diameter: 4, length: 6, shear: 20 })).toBeCloseTo(753.98, 2);
});

it('bends a forced screw until the plastic gives', () => {
  // by hand: I = π·3⁴/64 = 3.976 mm⁴; 12·207000·3.976·0.01/20³ = 12.35 N
  expect(forcedScrewLoad({ diameter: 3, length: 20, miss: 0.01, compressive: 40 })).toBeCloseTo(12.35, 2);
  // by hand: 40 MPa · 3 mm · 5 mm / 2 = 300 N is less than 12·207000·3.976·0.1/125 = 7901 N
  expect(forcedScrewLoad({ diameter: 3, length: 5, miss: 0.1, compressive: 40 })).toBe(300);
});

it('clamps as the tightening table says', () => {
  // table of preloads, class 8.8 at friction 0.14: M3 2477 N at 1.466 N·m, which is K = 0.197
  expect(preloadFromTorque({ torque: 1466, diameter: 3, factor: 0.197 })).toBeCloseTo(2477, -1);
  // washer ISO 7089 M3, 7 mm, on a hole of ISO 273 medium, 3.4 mm: area π/4·(49 − 11.56) = 29.405 mm²
  expect(pressureUnderHead({ preload: 294.05, headDiameter: 7, holeDiameter: 3.4 })).toBeCloseTo(10, 3);
});
