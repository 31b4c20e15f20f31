import { expect, it } from 'vitest';
import { bodyAxialStress, bodyShearStress, threadBendingStress } from '../../../src/mechanics/power-screw/stresses.js';
import { threadPressure } from '../../../src/mechanics/thread/bearing-pressure.js';
import { InputError } from '../../../src/units/faults.js';

// textbook-design, example 8-1 (from memory, recomputed): d 32, p 4 mm, dr 28, dm 30; one thread carries 0.38 of F.
const F = 6400;

it('matches the body and thread stresses of example 8-1', () => {
  expect(bodyShearStress({ torque: 26180, rootDiameter: 28 })).toBeCloseTo(6.07, 2);
  expect(bodyAxialStress({ axialForce: F, rootDiameter: 28 })).toBeCloseTo(-10.39, 2);
  expect(threadBendingStress({ axialForce: 0.38 * F, rootDiameter: 28, engagedThreads: 1, pitch: 4 })).toBeCloseTo(
    41.5,
    1,
  );
  // bearing 2·F/(π·dm·p) is the flank pressure over one pitch, half a pitch deep
  const bearing = { axialForce: 0.38 * F, pitchDiameter: 30, flankDepth: 2, engagedLength: 4, pitch: 4, share: 1 };
  expect(threadPressure(bearing)).toBeCloseTo(12.9, 1);
});

it('refuses values outside their ranges', () => {
  expect(() => bodyShearStress({ torque: -1, rootDiameter: 28 })).toThrow(InputError);
  expect(() => bodyAxialStress({ axialForce: 1, rootDiameter: 0 })).toThrow(InputError);
  expect(() => threadBendingStress({ axialForce: 1, rootDiameter: 1, engagedThreads: 0, pitch: 1 })).toThrow(
    /^engagedThreads: /,
  );
});
