import { describe, expect, it } from 'vitest';
import { clampHubTorque, gripPull, gripTorque } from '../../../src/mechanics/shaft/clamp-grip.js';
import { flatTorque } from '../../../src/mechanics/shaft/flat-torque.js';
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
  it('printed hub, 500 N a screw, friction 0.2: 0.5, 0.64, 0.8 N·m fresh, half after creep (common practice)', () => {
    const hub = { screws: 1, preload: 500, friction: 0.2 };
    for (const [diameter, torque] of [
      [5, 500],
      [6.35, 640],
      [8, 800],
    ] as const) {
      expect(Math.abs(clampHubTorque({ ...hub, diameter, kept: 1 }) - torque)).toBeLessThan(6);
      expect(clampHubTorque({ ...hub, diameter })).toBeCloseTo(clampHubTorque({ ...hub, diameter, kept: 1 }) / 2, 9);
    }
  });
  it('slips along the shaft at 2·T/d', () => {
    expect(gripPull({ torque: 250, diameter: 5 })).toBe(100);
  });
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
  expect(() => clampHubTorque({ screws: 0, preload: 1, diameter: 5, friction: 0.1 })).toThrow(/^screws: /);
  expect(() => clampHubTorque({ screws: 1, preload: 1, diameter: 5, friction: 0.1, kept: 2 })).toThrow(/^kept: /);
  expect(() => flatTorque({ diameter: 5, flatDepth: 2.5, length: 12, pressure: 30 })).toThrow(/^flatDepth: /);
  expect(() => setScrewTorque({ holdingPower: 1, diameter: 5, safety: 0 })).toThrow(/^safety: /);
  expect(() => gripPull({ torque: 1, diameter: 0 })).toThrow(/^diameter: /);
});
