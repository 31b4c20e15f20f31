import { describe, expect, it } from 'vitest';
import { gripPull, gripTorque, keptForce } from '../../../src/mechanics/shaft/clamp-grip.js';
import { flatTorque } from '../../../src/mechanics/shaft/flat-torque.js';
import { closingForce, closingStrain, leverForce } from '../../../src/mechanics/shaft/ring-closing.js';
import { setScrewTorque } from '../../../src/mechanics/shaft/set-screw.js';

describe('clamp', () => {
  // Two M3 of 2210 N as halves on 8 mm, friction 0.15: figures derived from the pressure integrals.
  const halves = { normalForce: 4420, diameter: 8, friction: 0.15 };
  it('line 5.304, cosine 6.753, uniform 8.332 N·m', () => {
    expect(gripTorque(halves)).toBeCloseTo(5304, 0);
    expect(gripTorque({ ...halves, contact: 'cosine' })).toBeCloseTo(6753, 0);
    expect(gripTorque({ ...halves, contact: 'uniform' })).toBeCloseTo(8332, 0);
  });
  it('agrees with the integrals of friction over the pressure, summed here', () => {
    // both halves: FN = ∫p·cos φ·dA over one half; T = ∫µ·p·r·dA over both
    const n = 4000;
    for (const [contact, p] of [
      ['uniform', () => 1],
      ['cosine', Math.cos],
    ] as const) {
      let [normal, torque] = [0, 0];
      for (let i = 0; i < n; i += 1) {
        const phi = -Math.PI / 2 + (Math.PI * (i + 0.5)) / n;
        normal += p(phi) * Math.cos(phi);
        torque += 2 * 0.15 * p(phi) * 4;
      }
      expect(gripTorque({ ...halves, contact }) / 4420).toBeCloseTo(torque / normal, 4);
    }
  });
  it('one M3 of 500 N at friction 0.2 holds 0.5, 0.64, 0.8 N·m on 5, 6.35, 8 mm by its own force (common practice)', () => {
    for (const [diameter, torque] of [
      [5, 500],
      [6.35, 640],
      [8, 800],
    ] as const) {
      expect(Math.abs(gripTorque({ normalForce: 500, friction: 0.2, diameter }) - torque)).toBeLessThan(6);
    }
  });
  it('slips along the shaft at 2·T/d', () => {
    expect(gripPull({ torque: 250, diameter: 5 })).toBe(100);
  });
});

// derived, worked: bore 12, outside 26, 16 long, E 2000, screw 14 from the axis: R 9.5, h 7, I 457.3
describe('a slit hub', () => {
  const ring = { offset: 14, radius: 9.5, thickness: 7 };

  it('takes 44.1 N to close a play of 0.15 mm, 88 N for 0.3 mm', () => {
    expect(closingForce({ ...ring, play: 0.15, length: 16, modulus: 2000 })).toBeCloseTo(44.1, 1);
    expect(closingForce({ ...ring, play: 0.3, length: 16, modulus: 2000 })).toBeCloseTo(88, 0);
    expect(closingForce({ ...ring, play: 0, length: 16, modulus: 2000 })).toBe(0);
  });

  it("opens by the handbook's 3·π·F·R³/(E·I) where the screw is as far out as the wall", () => {
    const [R, E, I, F] = [9.5, 2000, (16 * 7 ** 3) / 12, 50];
    const opening = (3 * Math.PI * F * R ** 3) / (E * I);
    // δ = π·ΔD·e/R with e = R: the play that this opening takes up
    expect(closingForce({ ...ring, offset: R, play: opening / Math.PI, length: 16, modulus: E })).toBeCloseTo(F, 9);
  });

  it('bends at its back with 7.9 MPa at 0.15 mm and 15.9 MPa at 0.3 mm', () => {
    expect(2000 * closingStrain({ ...ring, play: 0.15 })).toBeCloseTo(7.9, 1);
    expect(2000 * closingStrain({ ...ring, play: 0.3 })).toBeCloseTo(15.9, 1);
  });

  it('holds 1,808 N·mm at once and 1,004 N·mm where 0.556 is kept, of a screw of 500 N at friction 0.15 on 12 mm', () => {
    const held = (kept: number) => {
      const force = keptForce({ preload: 500, closing: 44.1, kept });
      return gripTorque({ normalForce: leverForce({ force, ...ring }), diameter: 12, friction: 0.15 });
    };
    // the source rounds (e + R)/R to 2.474 and the force to tenths
    expect(Math.abs(held(1) - 1808)).toBeLessThan(1);
    expect(Math.abs(held(0.556) - 1004)).toBeLessThan(1.5);
    expect(keptForce({ preload: 40, closing: 44.1, kept: 1 })).toBe(0);
  });
});

// finite elements: half a hub in plane stress, 4800 elements of four nodes, nu 0.38, the slit 1.5 wide; E 2000, a play of 0.1 mm, 1 mm long
describe('a slit hub with a thick wall', () => {
  const hub = (outside: number, bore: number, offset: number) => ({
    offset,
    radius: (outside + bore) / 4,
    thickness: (outside - bore) / 2,
  });
  const closing = (ring: ReturnType<typeof hub>) => closingForce({ ...ring, play: 0.1, length: 1, modulus: 2000 });

  it('is a curved beam, worked for a bore of 5 in 60, the screw 5.9 from the axis', () => {
    // R 16.25, h 27.5, ē = 16.25 − 27.5/ln 12 = 5.183: 0.96·0.1·2000·27.5·5.183/(2·16.25·(5.9 + 12.763)) = 45.1
    expect(closing(hub(60, 5, 5.9))).toBeCloseTo(45.1, 1);
    // (1 + 4·5.9/(π·16.25))/(1 + 2·1.1·27.5·5.183/(π·16.25²)) = 1.4623/1.3780
    expect(leverForce({ ...hub(60, 5, 5.9), force: 1 })).toBeCloseTo(1.0612, 3);
  });

  it.each([
    [29, 8, 7.4, 8.266, 1.844],
    [35, 5, 5.9, 23.71, 1.4143],
    [45, 4.5, 5.4, 36.182, 1.18],
    [60, 5, 5.9, 43.321, 1.081],
    [100, 5, 5.9, 63.704, 0.883],
    [60, 10, 8.4, 21.048, 1.39],
    [26, 12, 14, 1.658, 2.623],
  ])(
    'of %s mm with a bore of %s mm takes what finite elements take, and presses no more',
    (outside, bore, e, force, lever) => {
      const ring = hub(outside, bore, e);
      expect(closing(ring) / force).toBeGreaterThan(0.98);
      expect(closing(ring) / force).toBeLessThan(1.14);
      expect(leverForce({ ...ring, force: 1 }) / lever).toBeLessThan(1.01);
      expect(leverForce({ ...ring, force: 1 }) / lever).toBeGreaterThan(0.93);
    },
  );
});

describe('flat and set screw', () => {
  it('5 mm shaft, flat 0.5 deep and 12 long at 30 MPa carries about 0.27 N·m (common practice)', () => {
    expect(flatTorque({ diameter: 5, flatDepth: 0.5, length: 12, pressure: 30 })).toBeCloseTo(270, 6);
  });
  it('holding power of a #10 screw, 540 lbf (from memory), on 1/2 in: 540·0.25 = 135 lbf·in without safety', () => {
    expect(setScrewTorque({ holdingPower: 540, diameter: 0.5, safety: 1 })).toBe(135);
  });
});

it('refuses values outside their ranges', () => {
  expect(() => gripTorque({ normalForce: -1, diameter: 8, friction: 0.1 })).toThrow(/^normalForce: /);
  // @ts-expect-error a script may pass any word
  expect(() => gripTorque({ normalForce: 1, diameter: 8, friction: 0.1, contact: 'some' })).toThrow(/^contact: /);
  expect(() => keptForce({ preload: 1, closing: 0, kept: 2 })).toThrow(/^kept: /);
  expect(() => leverForce({ force: 1, offset: 5, radius: 0, thickness: 1 })).toThrow(/^radius: /);
  expect(() => closingStrain({ play: -0.1, offset: 5, radius: 5, thickness: 3 })).toThrow(/^play: /);
  expect(() => closingForce({ play: 0.1, offset: 5, radius: 5, thickness: 3, length: 0, modulus: 1 })).toThrow(
    /^length: /,
  );
  expect(() => flatTorque({ diameter: 5, flatDepth: 2.5, length: 12, pressure: 30 })).toThrow(/^flatDepth: /);
  expect(() => setScrewTorque({ holdingPower: 1, diameter: 5, safety: 0 })).toThrow(/^safety: /);
  expect(() => gripPull({ torque: 1, diameter: 0 })).toThrow(/^diameter: /);
});
