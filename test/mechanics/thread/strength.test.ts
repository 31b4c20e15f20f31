import { describe, expect, it } from 'vitest';
import { slidingPerTravel } from '../../../src/mechanics/sliding.js';
import { threadPressure } from '../../../src/mechanics/thread/bearing-pressure.js';
import { threadShear, toothWidth } from '../../../src/mechanics/thread/shear.js';
import { pressureVelocity, wearDepth } from '../../../src/mechanics/thread/wear.js';

// Worked example of common practice: 8 mm screw, lead 2, 15 mm nut, H1 0.8, flank area 132 mm².
const nut = { pitchDiameter: 7, flankDepth: 0.8, engagedLength: 15, pitch: 2 };

describe('pressure and PV', () => {
  it('50 N on all turns give 0.38 MPa, at 300 rpm PV 0.042; 20 N give PV 0.016 or so', () => {
    const at = (axialForce: number) => threadPressure({ ...nut, axialForce, share: 1 });
    expect(50 / at(50)).toBeCloseTo(132, 0);
    expect(at(50)).toBeCloseTo(0.38, 2);
    expect(pressureVelocity({ pressure: at(50), slidingSpeed: 110 })).toBeCloseTo(0.042, 3);
    expect(Math.abs(pressureVelocity({ pressure: at(20), slidingSpeed: 110 }) - 0.016)).toBeLessThan(0.001);
  });
  it('half the turns carry unless told otherwise, so the pressure is double', () => {
    expect(threadPressure({ ...nut, axialForce: 50 })).toBeCloseTo(
      2 * threadPressure({ ...nut, axialForce: 50, share: 1 }),
      12,
    );
  });
  it('counts only the time in motion when told', () => {
    expect(pressureVelocity({ pressure: 0.4, slidingSpeed: 100, moving: 0.1 })).toBeCloseTo(0.004, 12);
  });
});

describe('shear', () => {
  it('trapezoid: root of the basic profile is 0.634 P wide (basic crest 0.366 P, both confirmed)', () => {
    expect(toothWidth({ pitch: 2, flankAngle: 15, inward: 0.5 })).toBeCloseTo((1 - 0.366025) * 2, 5);
    expect(toothWidth({ pitch: 2, flankAngle: 15, inward: 0.5, thinning: 0.1 })).toBeCloseTo(1.268 - 0.1, 3);
  });
  it('is the force over π·D·w a turn, by hand: 100/(π·8.5·1.4·7.5) = 0.35665', () => {
    const shear = { axialForce: 100, rootDiameter: 8.5, rootWidth: 1.4, engagedLength: 15, pitch: 2 };
    expect(threadShear({ ...shear, share: 1 })).toBeCloseTo(0.35665, 5);
    expect(threadShear(shear)).toBeCloseTo(2 * 0.35665, 4);
  });
});

it('wear: 0.2 mm/(km·MPa) at 0.15 MPa and lead 2 takes 0.1 mm in about 300 m of travel (common practice)', () => {
  const slidingDistance = 300e3 * slidingPerTravel({ lead: 2, meanDiameter: 7 });
  expect(wearDepth({ wearRate: 0.2, pressure: 0.15, slidingDistance })).toBeCloseTo(0.1, 2);
});

it('refuses values outside their ranges', () => {
  expect(() => threadPressure({ ...nut, axialForce: -1 })).toThrow(/^axialForce: /);
  expect(() => threadPressure({ ...nut, axialForce: 1, share: 0 })).toThrow(/^share: /);
  expect(() => threadPressure({ ...nut, axialForce: 1, share: 1.1 })).toThrow(/^share: /);
  expect(() => threadPressure({ ...nut, axialForce: 1, flankDepth: 0 })).toThrow(/^flankDepth: /);
  expect(() => toothWidth({ pitch: 2, flankAngle: 15, inward: 0, thinning: 1 })).toThrow(/^thinning: /);
  expect(() => threadShear({ axialForce: 1, rootDiameter: 8, rootWidth: 0, engagedLength: 15, pitch: 2 })).toThrow(
    /^rootWidth: /,
  );
  expect(() => pressureVelocity({ pressure: 1, slidingSpeed: 1, moving: 1.5 })).toThrow(/^moving: /);
  expect(() => wearDepth({ wearRate: -1, pressure: 1, slidingDistance: 1 })).toThrow(/^wearRate: /);
});
