import { describe, expect, it } from 'vitest';
import { axialForceFromTorque } from '../../../src/mechanics/power-screw/axial-force.js';
import { efficiency } from '../../../src/mechanics/power-screw/efficiency.js';
import { loweringTorque } from '../../../src/mechanics/power-screw/lowering-torque.js';
import { raisingTorque } from '../../../src/mechanics/power-screw/raising-torque.js';
import { InputError } from '../../../src/units/faults.js';

/** A book's worked example; its answers hold to the digits it prints. */
interface Worked {
  readonly name: string;
  readonly input: Parameters<typeof raisingTorque>[0];
  readonly raise: number;
  readonly lower?: number;
  readonly efficiency?: number;
  /** relative rounding of the printed answers */
  readonly within: number;
}

const square = 0;
const acme = 14.5;

// N and mm, torques in N·mm, or lbf and in, torques in lbf·in: the formulas do not mind.
const BOOKS: readonly Worked[] = [
  {
    name: 'textbook-design, example 8-1, square, double start (answers from memory, recomputed)',
    input: {
      axialForce: 6400,
      meanDiameter: 30,
      lead: 8,
      flankAngle: square,
      friction: 0.08,
      collarFriction: 0.08,
      collarDiameter: 40,
    },
    raise: 26180,
    lower: 9770,
    efficiency: 0.311,
    within: 0.002,
  },
  {
    name: 'textbook-design, problem 8-4 (confirmed)',
    input: {
      axialForce: 6000,
      meanDiameter: 22.5,
      lead: 5,
      flankAngle: square,
      friction: 0.08,
      collarFriction: 0.05,
      collarDiameter: 40,
    },
    raise: 16230,
    lower: 6622,
    efficiency: 0.294,
    within: 0.0005,
  },
  {
    name: 'textbook-statics, section 5.6.1 problem 2 (confirmed)',
    input: { axialForce: 10000, meanDiameter: 2, lead: 0.5, flankAngle: square, friction: 0.2 },
    raise: 2840,
    within: 0.0005,
  },
  {
    name: 'textbook-design-b, example 16-1 (confirmed through a companion computation)',
    input: {
      axialForce: 20000,
      meanDiameter: 27,
      lead: 6,
      flankAngle: square,
      friction: 0.2,
      collarFriction: 0.15,
      collarDiameter: 24,
    },
    raise: 110148,
    within: 0.00001,
  },
  {
    name: 'published example, square 25x5 under 5 kN (confirmed)',
    input: {
      axialForce: 5000,
      meanDiameter: 22.5,
      lead: 5,
      flankAngle: square,
      friction: 0.09,
      collarFriction: 0.06,
      collarDiameter: 45,
    },
    raise: 15845,
    lower: 7825,
    efficiency: 0.251,
    within: 0.0005,
  },
  {
    name: 'textbook-design-c, example 17.2 (answer from memory, recomputed)',
    input: { axialForce: 75000, meanDiameter: 37, lead: 6, flankAngle: square, friction: 0.1 },
    raise: 211450,
    within: 0.0001,
  },
  {
    name: 'textbook-design-d, Acme 1.25-5 (from memory, recomputed)',
    input: {
      axialForce: 1000,
      meanDiameter: 1.15,
      lead: 0.2,
      flankAngle: acme,
      friction: 0.15,
      collarFriction: 0.02,
      collarDiameter: 1.75,
    },
    raise: 139.5,
    efficiency: 0.23,
    within: 0.01,
  },
  {
    name: 'textbook-design-e, example 10.1, double Acme 1 in (from memory; the book takes the normal plane, 0.02 % off)',
    input: {
      axialForce: 1000,
      meanDiameter: 0.9,
      lead: 0.4,
      flankAngle: acme,
      friction: 0.12,
      collarFriction: 0.09,
      collarDiameter: 1.5,
    },
    raise: 189.0,
    efficiency: 0.337,
    within: 0.001,
  },
];

const near = (value: number, wanted: number, within: number) =>
  expect(Math.abs(value / wanted - 1), `${value} against ${wanted}`).toBeLessThanOrEqual(within);

describe('worked examples of power screws', () => {
  it.each(BOOKS)('$name', ({ input, raise, lower, efficiency: share, within }) => {
    near(raisingTorque(input), raise, within);
    if (lower !== undefined) near(loweringTorque(input), lower, within);
    if (share !== undefined) near(efficiency(input), share, Math.max(within, 0.002));
  });

  it('example 8-1 without its collar: the load drives the screw (recomputed by hand: 15937 and −465.6 N·mm)', () => {
    // F·dm/2 = 96000; raise (8 + 0.08·94.2478) / (94.2478 − 0.64) = 15.5398/93.6078; lower (7.5398 − 8)/(94.8878)
    const thread = { axialForce: 6400, meanDiameter: 30, lead: 8, flankAngle: 0, friction: 0.08 };
    expect(raisingTorque(thread)).toBeCloseTo((96000 * 15.539822) / 93.60778, 0);
    expect(loweringTorque(thread)).toBeCloseTo((96000 * -0.460178) / 94.88778, 0);
  });
});

describe('force that 0.3 N·m pushes with at friction 0.2 (arithmetic of common practice, rounded)', () => {
  it.each([
    { name: '8x2', meanDiameter: 7, lead: 2, force: 280, share: 0.3 },
    { name: '8x4(P2)', meanDiameter: 7, lead: 4, force: 210, share: 0.45 },
    { name: '8x8(P2)', meanDiameter: 7, lead: 8, force: 140, share: 0.59 },
    { name: '12x3', meanDiameter: 10.5, lead: 3, force: 190, share: 0.3 },
  ])('$name', ({ meanDiameter, lead, force, share }) => {
    const thread = { meanDiameter, lead, flankAngle: 15, friction: 0.2 };
    expect(Math.abs(axialForceFromTorque({ ...thread, torque: 300 }) - force)).toBeLessThanOrEqual(5);
    expect(Math.abs(efficiency(thread) - share)).toBeLessThanOrEqual(0.005);
  });
});

describe('Tr8x2 and Tr8x8 of common practice, by hand', () => {
  // friction 0.2 is 0.2071 on the flank; tan λ 0.0909; 60·3.5·tan(5.20° + 11.70°) = 63.8 N·mm, efficiency 0.30
  it('raises 60 N by 63.8 N·mm', () => {
    const thread = { axialForce: 60, meanDiameter: 7, lead: 2, flankAngle: 15, friction: 0.2 };
    expect(raisingTorque(thread)).toBeCloseTo(63.8, 1);
    expect(efficiency(thread)).toBeCloseTo(0.3, 2);
  });

  // 2π·400·0.30/2 = 377 N and 2π·400·0.55/8 = 173 N: what a motor of 0.4 N·m pushes with at these efficiencies
  it.each([
    [2, 0.3, 377],
    [8, 0.55, 173],
  ])('of a lead of %d mm at an efficiency of %d pushes with %d N', (lead, share, force) => {
    // λ + ρ where tan λ / tan(λ + ρ) is that efficiency
    const slope = lead / (Math.PI * 7);
    const friction = Math.tan(Math.atan(slope / share) - Math.atan(slope)) * Math.cos(Math.PI / 12);
    const thread = { meanDiameter: 7, lead, flankAngle: 15, friction };
    expect(efficiency(thread)).toBeCloseTo(share, 9);
    expect(axialForceFromTorque({ ...thread, torque: 400 })).toBeCloseTo(force, 0);
  });
});

describe('relations', () => {
  it('efficiency without a collar is tan λ / tan(λ + ρ), ρ = atan(f / cos α)', () => {
    for (const lead of [1, 2, 4, 8]) {
      const slope = Math.atan(lead / (Math.PI * 7));
      const rho = Math.atan(0.2 / Math.cos(Math.PI / 12));
      const share = efficiency({ meanDiameter: 7, lead, flankAngle: 15, friction: 0.2 });
      expect(share).toBeCloseTo(Math.tan(slope) / Math.tan(slope + rho), 12);
    }
  });

  it('a self-locking thread stays below 50 % efficiency (confirmed statement)', () => {
    for (const lead of [0.5, 1, 2, 3, 4, 6, 8]) {
      const thread = { axialForce: 1, meanDiameter: 7, lead, flankAngle: 15, friction: 0.2 };
      if (loweringTorque(thread) > 0) expect(efficiency(thread)).toBeLessThan(0.5);
    }
  });

  it('without friction both torques are F·l/2π', () => {
    const thread = { axialForce: 100, meanDiameter: 7, lead: 2, flankAngle: 15, friction: 0 };
    expect(raisingTorque(thread)).toBeCloseTo(100 / Math.PI, 10);
    expect(loweringTorque(thread)).toBeCloseTo(-100 / Math.PI, 10);
    expect(efficiency(thread)).toBeCloseTo(1, 12);
  });
});

describe('faults', () => {
  const good = { axialForce: 10, meanDiameter: 7, lead: 2, flankAngle: 15, friction: 0.2 };

  it('refuses to raise where π·dm ≤ f·l·sec α, and calls that no efficiency', () => {
    // square thread, f 0.5: the limit is l = 2π·dm
    const steep = { ...good, flankAngle: 0, friction: 0.5, lead: 2 * Math.PI * 7 + 0.01 };
    expect(() => raisingTorque(steep)).toThrow(InputError);
    expect(() => axialForceFromTorque({ ...steep, torque: 1 })).toThrow(InputError);
    expect(efficiency(steep)).toBe(0);
    // on the limit itself the torque has no bound
    const limit = { ...steep, lead: 2 * Math.PI * 7 };
    expect(() => raisingTorque(limit)).toThrow(InputError);
    expect(efficiency(limit)).toBe(0);
    expect(raisingTorque({ ...steep, lead: 2 * Math.PI * 7 - 0.01 })).toBeGreaterThan(0);
  });

  it.each([
    ['axialForce', -1],
    ['axialForce', Number.NaN],
    ['meanDiameter', 0],
    ['lead', -2],
    ['lead', Number.POSITIVE_INFINITY],
    ['flankAngle', 61],
    ['flankAngle', -1],
    ['friction', -0.1],
    ['friction', 2.1],
    ['collarFriction', -1],
    ['collarDiameter', -1],
  ])('names %s when it is %s', (field, value) => {
    const bad = { ...good, collarFriction: 0.1, collarDiameter: 10, [field]: value };
    expect(() => raisingTorque(bad)).toThrow(new RegExp(`^${field}: `));
    expect(() => loweringTorque(bad)).toThrow(InputError);
  });

  it('wants the collar diameter with the collar friction', () => {
    expect(() => raisingTorque({ ...good, collarFriction: 0.1 })).toThrow(/^collarDiameter: /);
  });
});
