import { expect, it } from 'vitest';
import { preloadFromTorque, pressureUnderHead, torqueForPreload } from '../../../src/mechanics/bolt/preload.js';

// tightening-chart: torque and preload of class 8.8 at friction 0.14, both confirmed as numbers; they imply K 0.19 to 0.20.
it.each([
  ['M3', 3, 1344, 2210],
  ['M4', 4, 3040, 3830],
  ['M5', 5, 6030, 6260],
])('%s: the chart torque sets up the chart preload within 5 %%', (_, diameter, torque, preload) => {
  expect(Math.abs(preloadFromTorque({ torque, diameter }) / preload - 1)).toBeLessThan(0.05);
});

it('torque and preload undo each other', () => {
  expect(preloadFromTorque({ torque: torqueForPreload({ preload: 500, diameter: 3 }), diameter: 3 })).toBeCloseTo(
    500,
    9,
  );
  expect(preloadFromTorque({ torque: 300, diameter: 3, factor: 0.15 })).toBeCloseTo(300 / 0.45, 9);
});

it('pressure under a washer of 7 on a hole of 3.4, by hand: 500/(π/4·37.44) = 17.00', () => {
  expect(pressureUnderHead({ preload: 500, headDiameter: 7, holeDiameter: 3.4 })).toBeCloseTo(17.0, 2);
});

it('refuses values outside their ranges', () => {
  expect(() => preloadFromTorque({ torque: -1, diameter: 3 })).toThrow(/^torque: /);
  expect(() => torqueForPreload({ preload: 1, diameter: 0 })).toThrow(/^diameter: /);
  expect(() => preloadFromTorque({ torque: 1, diameter: 3, factor: 0 })).toThrow(/^factor: /);
  expect(() => pressureUnderHead({ preload: 1, headDiameter: 3, holeDiameter: 3 })).toThrow(/^headDiameter: /);
});
