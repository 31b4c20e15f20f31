import { expect, it } from 'vitest';
import { stallForce } from '../../../src/parts/common/stall-force.js';
import type { Screw } from '../../../src/sheet/resolve-screw.js';
import type { DutySheet } from '../../../src/sheet/sections/duty.js';
import { exactly } from '../../../src/units/measured.js';

const screw = { pitchDiameter: exactly(7), lead: 2, flankAngle: 15 } as unknown as Screw;
const force = (duty: object) => stallForce({ duty: duty as DutySheet, screw });
/** F = 2·T/d2 · (π·d2 − f·l/cos 15°) / (l + π·f·d2/cos 15°) of Tr8x2, a textbook's raising torque turned round. */
const byHand = (torque: number, friction: number) => {
  const f = friction / Math.cos(Math.PI / 12);
  return (((2 * torque) / 7) * (7 * Math.PI - 2 * f)) / (2 + 7 * Math.PI * f);
};

it('a stalled motor pushes with what the least friction leaves: 0.05, or 0.08 of a screw that is told to be dry', () => {
  expect(force({ motor: { torque: 400 } })).toBeCloseTo(byHand(400, 0.05), 6);
  expect(force({ motor: { torque: 400 }, grease: 'greased' })).toBeCloseTo(byHand(400, 0.05), 6);
  expect(force({ motor: { torque: 400 }, grease: 'dry' })).toBeCloseTo(byHand(400, 0.08), 6);
});

it('a gear multiplies it, and where the motor is not told nobody knows', () => {
  expect(force({ motor: { torque: 400, gear: 3 } })).toBeCloseTo(byHand(1200, 0.05), 6);
  expect(force({ motor: {} })).toBeUndefined();
  expect(force({})).toBeUndefined();
});
