import { expect, it } from 'vitest';
import { axialPlay, nutThread, rootDiameterOf } from '../../../src/mechanics/thread/nut-thread.js';

const clear = { diametralClearance: 0.3, axialClearance: 0.1 };

// basic sizes by hand; trapezoid of pitch 2: crest clearance 0.25 a side
it.each([
  ['Tr 8 × 2', { form: 'trapezoidal', flankAngle: 15, screwMajor: 8, screwPitchDiameter: 7, pitch: 2 }, 6.3, 7.3, 8.8],
  [
    'M8',
    { form: 'metric-v', flankAngle: 30, screwMajor: 8, screwPitchDiameter: 7.188, pitch: 1.25 },
    6.9469,
    7.488,
    8.5,
  ],
  [
    '1/2-10',
    { form: 'acme', flankAngle: 14.5, screwMajor: 12.7, screwPitchDiameter: 11.43, pitch: 2.54 },
    10.46,
    11.73,
    13.508,
  ],
  [
    '1/4-16',
    { form: 'acme', flankAngle: 14.5, screwMajor: 6.35, screwPitchDiameter: 5.556, pitch: 1.5875 },
    5.0625,
    5.856,
    6.904,
  ],
] as const)('%s opened by 0.3 on its diameters and 0.1 along the axis', (_, screw, minor, pitchDiameter, major) => {
  const thread = nutThread({ ...screw, ...clear });
  expect(thread.minor).toBeCloseTo(minor, 4);
  expect(thread.pitchDiameter).toBeCloseTo(pitchDiameter, 9);
  expect(thread.major).toBeCloseTo(major, 9);
  expect(thread.grooveWidth).toBeCloseTo(screw.pitch / 2 + 0.1, 12);
  expect(thread.flankSlope).toBeCloseTo(Math.tan((screw.flankAngle * Math.PI) / 180), 12);
});

it('plays by the clearance along both flanks and the groove: 0.4·tan 15° + 0.05', () => {
  expect(axialPlay({ diametralClearance: 0.4, axialClearance: 0.05, flankAngle: 15 })).toBeCloseTo(0.1572, 4);
});

it('has its root at the major diameter where the flanks do not meet', () => {
  const square = { minor: 6, pitchDiameter: 7, major: 8, pitch: 2, grooveWidth: 1, flankSlope: 0 };
  expect(rootDiameterOf(square)).toBe(8);
  expect(rootDiameterOf({ ...square, flankSlope: 0.25 })).toBe(8);
});
