import { describe, expect, it } from 'vitest';
import { holding, holdingAtFriction } from '../../../src/mechanics/power-screw/holding.js';
import { leadAngle } from '../../../src/mechanics/power-screw/lead-angle.js';
import { selfLockingFriction } from '../../../src/mechanics/power-screw/self-locking.js';
import { InputError } from '../../../src/units/faults.js';

const inch = 25.4;
const acme14 = { major: inch / 4, pitchDiameter: inch / 4 - inch / 32, lead: inch / 16, flankAngle: 14.5 };

// Lead angle and friction below which the screw back-drives: table of common practice, arithmetic.
const TABLE = [
  {
    name: '8x1.5',
    lead: 1.5,
    major: 8,
    pitchDiameter: 7.25,
    flankAngle: 15,
    angle: 3.8,
    friction: 0.064,
    word: 'may-creep',
  },
  { name: '8x2', lead: 2, major: 8, pitchDiameter: 7, flankAngle: 15, angle: 5.2, friction: 0.088, word: 'may-creep' },
  {
    name: '8x4(P2)',
    lead: 4,
    major: 8,
    pitchDiameter: 7,
    flankAngle: 15,
    angle: 10.3,
    friction: 0.176,
    word: 'may-creep',
  },
  { name: '8x8(P2)', lead: 8, major: 8, pitchDiameter: 7, flankAngle: 15, angle: 20.0, friction: 0.351, word: 'falls' },
  {
    name: '10x2',
    lead: 2,
    major: 10,
    pitchDiameter: 9,
    flankAngle: 15,
    angle: 4.0,
    friction: 0.068,
    word: 'may-creep',
  },
  {
    name: '12x3',
    lead: 3,
    major: 12,
    pitchDiameter: 10.5,
    flankAngle: 15,
    angle: 5.2,
    friction: 0.088,
    word: 'may-creep',
  },
  {
    name: '16x4',
    lead: 4,
    major: 16,
    pitchDiameter: 14,
    flankAngle: 15,
    angle: 5.2,
    friction: 0.088,
    word: 'may-creep',
  },
  { name: '1/4-16', ...acme14, angle: 5.2, friction: 0.088, word: 'may-creep' },
  { name: 'M5', lead: 0.8, major: 5, pitchDiameter: 4.48, flankAngle: 30, angle: 3.2, friction: 0.049, word: 'holds' },
  {
    name: 'M8',
    lead: 1.25,
    major: 8,
    pitchDiameter: 7.188,
    flankAngle: 30,
    angle: 3.2,
    friction: 0.048,
    word: 'holds',
  },
];

describe('table of hobby screws', () => {
  it.each(TABLE)('$name: $word', (row) => {
    const thread = { lead: row.lead, meanDiameter: row.pitchDiameter, flankAngle: row.flankAngle };
    expect(Math.abs(leadAngle(thread) - row.angle)).toBeLessThanOrEqual(0.06); // one digit printed, cut off rather than rounded for M5
    expect(Math.abs(selfLockingFriction(thread) - row.friction)).toBeLessThanOrEqual(0.0006);
    expect(holding(row)).toBe(row.word);
  });

  it('has the standards page figures for Tr 8x2 and Tr 8x8(P2)', () => {
    expect(leadAngle({ lead: 2, meanDiameter: 7 })).toBeCloseTo(5.197, 3);
    expect(leadAngle({ lead: 8, meanDiameter: 7 })).toBeCloseTo(19.991, 3);
    expect(selfLockingFriction({ lead: 2, meanDiameter: 7, flankAngle: 15 })).toBeCloseTo(0.0878, 4);
    expect(selfLockingFriction({ lead: 8, meanDiameter: 7, flankAngle: 15 })).toBeCloseTo(0.3514, 4);
  });
});

describe('limits of the rule', () => {
  // Thick root: pitch diameter larger than the major, so that only the rule on the lead speaks.
  const wide = { major: 12, pitchDiameter: 100, flankAngle: 15 };
  it.each([
    [6, 'may-creep'],
    [6.001, 'falls'],
    [4, 'holds'],
    [4.001, 'may-creep'],
  ])('lead %s on a 12 mm screw: %s', (lead, word) => {
    expect(holding({ ...wide, lead })).toBe(word);
  });

  // Thick major, so that only friction speaks; square thread: falls where tan λ > 0.2.
  const thin = { major: 100, pitchDiameter: 10 / Math.PI, flankAngle: 0 };
  it.each([
    [2.001, 'falls'],
    [1.999, 'may-creep'],
    [10 * Math.tan(0.7 * Math.atan(0.08)) + 0.001, 'may-creep'],
    [10 * Math.tan(0.7 * Math.atan(0.08)) - 0.001, 'holds'],
  ])('lead %s round a length of 10: %s', (lead, word) => {
    expect(holding({ ...thin, lead })).toBe(word);
  });
});

describe('at one friction', () => {
  const tr8x2 = { lead: 2, meanDiameter: 7, flankAngle: 15 };
  it.each([
    [0.08, 'falls'], // back-drives below 0.0878
    [0.1, 'may-creep'], // 0.7·atan(0.1/cos 15°) = 4.14° < 5.197°
    [0.2, 'holds'], // 0.7·atan(0.2/cos 15°) = 8.19°
    [0.5, 'holds'],
  ])('Tr8x2 at %s: %s', (friction, word) => {
    expect(holdingAtFriction({ ...tr8x2, friction })).toBe(word);
  });

  it('does not fall at the very friction below which the load turns the screw', () => {
    expect(holdingAtFriction({ ...tr8x2, friction: selfLockingFriction(tr8x2) })).toBe('may-creep');
  });
});

describe('faults', () => {
  it('names the field', () => {
    const good = { lead: 2, major: 8, pitchDiameter: 7, flankAngle: 15 };
    expect(() => holding({ ...good, lead: 0 })).toThrow(/^lead: /);
    expect(() => holding({ ...good, major: Number.NaN })).toThrow(/^major: /);
    expect(() => holding({ ...good, pitchDiameter: -7 })).toThrow(/^pitchDiameter: /);
    expect(() => holdingAtFriction({ lead: 2, meanDiameter: 7, flankAngle: 15, friction: 3 })).toThrow(InputError);
    expect(() => leadAngle({ lead: 2, meanDiameter: 0 })).toThrow(InputError);
  });
});
