import { describe, expect, it } from 'vitest';
import { slidingPerTravel, slidingSpeed } from '../../../src/mechanics/sliding.js';
import { threadPressure } from '../../../src/mechanics/thread/bearing-pressure.js';
import { threadBending, toothArm } from '../../../src/mechanics/thread/bending.js';
import { threadShear } from '../../../src/mechanics/thread/shear.js';
import { spreadForce } from '../../../src/mechanics/thread/spread.js';
import { bearablePv, GREASE, pressureVelocity, wearDepth } from '../../../src/mechanics/thread/wear.js';

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
  it('over half the flank: Tr8x2, 15 long, 60 N, 300 rpm: 0.728 MPa, 110.4 mm/s, PV 0.0803 (worked by hand)', () => {
    const pressure = threadPressure({ ...nut, flankDepth: 1, axialForce: 60 });
    const speed = slidingSpeed({ feed: 10, lead: 2, meanDiameter: 7 });
    expect(pressure).toBeCloseTo(0.728, 3);
    expect(speed).toBeCloseTo(110.4, 1);
    expect(pressureVelocity({ pressure, slidingSpeed: speed })).toBeCloseTo(0.0803, 4);
  });
  it('what a nut bears: grease once 1.3, kept 2; half of it where the air takes half the room', () => {
    const at = (grease: number, temperature: number) =>
      bearablePv({ dry: 0.025, grease, temperature, standingLimit: 45 });
    expect(at(GREASE.dry, 23)).toBe(0.025);
    expect(at(GREASE.once, 23)).toBeCloseTo(0.0325, 12);
    expect(at(GREASE.kept, 34)).toBeCloseTo(0.025, 12);
    expect(at(GREASE.dry, -10)).toBe(0.025);
    expect(at(GREASE.dry, 50)).toBe(0);
    // greased or not, 0.0803 is too much for it: by 3.2 dry
    expect(0.0803 / at(1, 23)).toBeCloseTo(3.2, 1);
  });
});

describe('shear', () => {
  it('is the force over π·D·w a turn, by hand: 100/(π·8.5·1.4·7.5) = 0.35665', () => {
    const shear = { axialForce: 100, rootDiameter: 8.5, rootWidth: 1.4, engagedLength: 15, pitch: 2 };
    expect(threadShear({ ...shear, share: 1 })).toBeCloseTo(0.35665, 5);
    expect(threadShear(shear)).toBeCloseTo(2 * 0.35665, 4);
  });
});

describe('bending', () => {
  it('the load stands between nut minor and screw major: Tr8x2 at 0.3 of clearance, by hand', () => {
    // (8.8 − (6.3 + 8)/2)/2 = 0.825, where half the depth of the tooth would be 0.625: 32 % more
    const arm = toothArm({ rootDiameter: 8.8, nutMinor: 6.3, screwMajor: 8 });
    expect(arm).toBeCloseTo(0.825, 12);
    // 6·100·0.825/(π·8.8·1.3²·3.75) = 495/175.2
    const tooth = { rootDiameter: 8.8, rootWidth: 1.3, arm, engagedLength: 15, pitch: 2 };
    expect(threadBending({ ...tooth, axialForce: 100 })).toBeCloseTo(2.825, 3);
  });
  it('machine design textbook, power screws example 8-1 (from memory, recomputed): 0.38 of 6400 N on one square thread, 41.5 MPa', () => {
    const square = { rootDiameter: 28, rootWidth: 2, arm: 1, engagedLength: 4, pitch: 4, share: 1 };
    expect(threadBending({ ...square, axialForce: 0.38 * 6400 })).toBeCloseTo(41.5, 1);
  });
  it('refuses a contact outside the root', () => {
    expect(() => toothArm({ rootDiameter: 7, nutMinor: 6.3, screwMajor: 8 })).toThrow(/^rootDiameter: /);
    expect(() => toothArm({ rootDiameter: 7, nutMinor: 6, screwMajor: 8 })).toThrow(/^rootDiameter: /);
  });
});

it('a screw wedges halves apart: by hand the radial pushes of a half, added up over its turn', () => {
  let sum = 0;
  for (let i = 0; i < 1000; i++) sum += (Math.sin((Math.PI * (i + 0.5)) / 1000) * 200 * Math.tan(Math.PI / 6)) / 2000;
  expect(spreadForce({ axialForce: 200, flankAngle: 30 })).toBeCloseTo(sum, 3);
  expect(() => spreadForce({ axialForce: -1, flankAngle: 30 })).toThrow(/^axialForce: /);
  expect(() => spreadForce({ axialForce: 1, flankAngle: 61 })).toThrow(/^flankAngle: /);
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
  expect(() => threadShear({ axialForce: 1, rootDiameter: 8, rootWidth: 0, engagedLength: 15, pitch: 2 })).toThrow(
    /^rootWidth: /,
  );
  expect(() => bearablePv({ dry: 1, grease: 0.5, temperature: 23, standingLimit: 45 })).toThrow(/^grease: /);
  expect(() => bearablePv({ dry: 1, grease: 1, temperature: 23, standingLimit: 20 })).toThrow(/^standingLimit: /);
  expect(() => bearablePv({ dry: 1, grease: 1, temperature: 23, standingLimit: 23 })).toThrow(/^standingLimit: /);
  expect(() => wearDepth({ wearRate: -1, pressure: 1, slidingDistance: 1 })).toThrow(/^wearRate: /);
});
