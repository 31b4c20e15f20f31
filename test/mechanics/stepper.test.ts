import { expect, it } from 'vitest';
import { cornerSpeed, speedAtTorque } from '../../src/mechanics/stepper.js';

it('by hand: 3 mH, 1.5 A at 24 V swing 3 A in 0.375 ms; 200 such steps a turn are 800 rpm', () => {
  // t = L·ΔI/U = 0.003·3/24 = 0.375 ms; a turn 75 ms; 60/0.075 = 800
  expect(cornerSpeed({ voltage: 24, inductance: 3, current: 1.5, steps: 200 })).toBeCloseTo(800, 9);
  expect(cornerSpeed({ voltage: 12, inductance: 3, current: 1.5, steps: 400 })).toBeCloseTo(200, 9);
});

it('keeps its torque up to the corner, then its power: half the torque at twice the speed', () => {
  const motor = { torque: 400, corner: 800 };
  expect([400, 200, 100].map((needed) => speedAtTorque({ ...motor, needed }))).toEqual([800, 1600, 3200]);
  expect(speedAtTorque({ ...motor, needed: 401 })).toBe(0);
});

it('refuses values outside their ranges', () => {
  const winding = { voltage: 24, inductance: 3, current: 1.5, steps: 200 };
  expect(() => cornerSpeed({ ...winding, inductance: 0 })).toThrow(/^inductance: /);
  expect(() => cornerSpeed({ ...winding, steps: 0.5 })).toThrow(/^steps: /);
  expect(() => speedAtTorque({ torque: 0, corner: 800, needed: 1 })).toThrow(/^torque: /);
  expect(() => speedAtTorque({ torque: 1, corner: 800, needed: 0 })).toThrow(/^needed: /);
});
