import { describe, expect, it } from 'vitest';
import type { Shaft } from '../../../src/parts/common/bore.js';
import type { ClampRing } from '../../../src/parts/common/clamp-ring.js';
import { clampPreload, type Grip, type GripLife, gripOf, seatPressure } from '../../../src/parts/common/grip.js';
import { exactly } from '../../../src/units/measured.js';

/** ABS of the worked example, in round figures. */
const PLASTIC = {
  tensile: 36,
  tensileAcross: 18,
  shear: 20,
  modulus: 2000,
  heat: { glass: 103 },
  standingLimit: 75,
  shares: { hour: 0.42, thousandHours: 0.28, years: 0.2 },
  creep: { hour: 0.85, exponent: 0.063, strain: 0.007 },
  stiffness: [
    [40, 0.93],
    [60, 0.82],
    [80, 0.6],
  ],
} as const;
const LIFE: GripLife = { material: PLASTIC, temperature: 23, retighten: false, reversing: true };
const SHAFT: Shaft = { form: 'round', diameter: exactly(12) };
/** bore 12, outside 26, 16 long, screw 14 from the axis */
const RING: ClampRing = { radius: 9.5, thickness: 7, offset: 14, length: 16, counted: 1 };
const PLACE = { shaft: SHAFT, engagement: 16, play: 0.15, ring: RING };
const clamp = (more: Partial<NonNullable<Grip['clamp']>> = {}): Grip => ({
  clamp: { screw: 'M5', count: 1, washers: false, ...more },
  friction: 0.15,
});

// derived, worked: 44.1 N close this hub by 0.15 mm; leverage (14 + 9.5)/9.5
const CLOSING = 44.1;
const held = (preload: number, kept: number) => (kept * (0.9 * preload - CLOSING) * 23.5 * 0.15 * 12) / 9.5;

describe('preload of a clamp screw', () => {
  it('is what the plastic bears while it is tightened: 0.5·1.2·36 = 21.6 MPa', () => {
    // M5 head 8.5 on a hole of 5.5: 33.0 mm²; nut 8 across flats: 0.866·64 − 23.76 = 31.7 mm²; washer 10: 54.8 mm²
    expect(clampPreload({ screw: 'M5', washers: false }, PLASTIC)).toMatchObject({ heldBy: 'nut' });
    expect(clampPreload({ screw: 'M5', washers: false }, PLASTIC).force).toBeCloseTo(21.6 * 31.67, 0);
    expect(clampPreload({ screw: 'M5', washers: true }, PLASTIC).force).toBeCloseTo(21.6 * 54.78, 0);
  });

  it('is never more than the torque gives: T/(0.2·d)', () => {
    expect(clampPreload({ screw: 'M5', washers: true }, PLASTIC, 500)).toEqual({ force: 500, heldBy: 'tightening' });
  });

  it('presses on the smaller seat', () => {
    expect(seatPressure({ screw: 'M5', washers: false }, 500)).toBeCloseTo(500 / 31.67, 1);
    expect(seatPressure({ screw: 'M5', washers: true }, 500)).toBeCloseTo(500 / 54.78, 1);
  });
});

describe('a clamp over its life', () => {
  const of = (grip: Grip, life: Partial<GripLife> = {}, place = PLACE) => gripOf(grip, place, { ...LIFE, ...life });
  const screw = { ...clamp(), tightening: 500 };

  it('holds what is kept of 0.9·F0 − F_close', () => {
    const grip = of(screw);
    expect(grip.closing).toBeCloseTo(CLOSING, 1);
    // ABS keeps 0.85·24^−0.063 = 0.696 for a day and 0.434 for five years; tightened again 0.434 + 0.304·0.434
    expect(grip.clamp!.firstDay).toBeCloseTo(held(500, 0.6957), -1);
    expect(grip.clamp!.cold).toBeCloseTo(held(500, 0.85 * 43_800 ** -0.063), 0);
    expect(grip.clamp!.hot).toBeCloseTo(grip.clamp!.cold, 9);
    expect(grip.clamp!.again / grip.clamp!.cold).toBeCloseTo(1 + 0.304, 3);
    expect(grip).toMatchObject({
      by: 'clamp',
      holds: grip.clamp!.hot,
      friction: grip.clamp!.hot,
      form: 0,
      setScrew: 0,
    });
  });

  it('loses by heat twice: it relaxes faster, and is softer', () => {
    const grip = of(screw, { temperature: 60 });
    // u = 43/80, n = 0.063/u; E falls to 0.82
    const kept = 0.85 * 43_800 ** -(0.063 / (43 / 80));
    expect(grip.clamp!.cold).toBeCloseTo(held(500, kept), 0);
    expect(grip.clamp!.hot).toBeCloseTo(held(500, 0.82 * kept), 0);
    expect(grip.clamp!.firstDay).toBeCloseTo(of(screw).clamp!.firstDay, 9);
    // at its glass transition nothing holds
    expect(of(screw, { temperature: 103 }).holds).toBe(0);
  });

  it('counts a second tightening only where it is asked for', () => {
    const grip = of(screw, { retighten: true });
    expect(grip.holds).toBe(grip.clamp!.again);
  });

  it('counts screws, and only those that close it', () => {
    const two = of(screw, {}, { ...PLACE, ring: { ...RING, counted: 2 } }).clamp!.cold;
    expect(two).toBeCloseTo(held(1000, 0.85 * 43_800 ** -0.063), 0);
    expect(of(screw, {}, { ...PLACE, ring: { ...RING, counted: 0 } }).holds).toBe(0);
  });

  it('is not closed by a bore that is tight', () => {
    expect(of(screw, {}, { ...PLACE, play: -0.05 }).closing).toBe(0);
  });
});

describe('flats, keys and set screws', () => {
  const flatShaft: Shaft = { form: 'd', diameter: exactly(5), across: exactly(4.5) };
  const place = { shaft: flatShaft, engagement: 12, play: 0.15, ring: RING };
  // w² = 9 mm²: 12·9/12 = 9 mm³ a MPa; 1.2·36 MPa · 0.20 at 23 °C
  const form = 9 * 1.2 * 36 * 0.2;

  it('are never added to friction', () => {
    const weak = { ...clamp(), tightening: 130 };
    const oneWay = gripOf(weak, place, { ...LIFE, reversing: false });
    expect(oneWay).toMatchObject({ by: 'form' });
    expect(oneWay.holds).toBeCloseTo(form, 6);
    expect(oneWay.friction).toBeLessThan(form);
    const strong = gripOf({ ...clamp(), tightening: 1000 }, place, { ...LIFE, reversing: false });
    expect(strong).toMatchObject({ by: 'clamp', holds: strong.clamp!.hot });
  });

  it('count for nothing beside a clamp where the torque reverses', () => {
    const weak = gripOf({ ...clamp(), tightening: 130 }, place, LIFE);
    expect(weak).toMatchObject({ by: 'clamp', holds: weak.clamp!.hot });
  });

  it('bear half as much both ways where there is no clamp', () => {
    const { ring: _, ...open } = place;
    expect(gripOf({ friction: 0.15 }, open, LIFE)).toMatchObject({ by: 'form', preload: 0, closing: 0 });
    expect(gripOf({ friction: 0.15 }, open, LIFE).holds).toBeCloseTo(form / 2, 6);
  });

  it('bear the less of what stands for years and what repeats, hot', () => {
    // u = 43/80: φ = u^1.5 = 0.394, r = u^0.75 = 0.628
    const hot = gripOf(clamp(), place, { ...LIFE, temperature: 60, reversing: false }).form;
    expect(hot).toBeCloseTo(9 * 1.2 * 36 * 0.2 * (43 / 80) ** 1.5, 6);
  });

  it('end where the flat ends', () => {
    const short = { ...place, shaft: { ...flatShaft, flatLength: 6 } };
    expect(gripOf(clamp(), short, { ...LIFE, reversing: false }).form).toBeCloseTo(form / 2, 6);
  });

  it('carry on a key by half of its side: p·d·L·h/2', () => {
    const keyed: Shaft = { form: 'keyed', diameter: exactly(14), key: { width: 5, depth: 2.3 } };
    const key = gripOf(clamp(), { ...place, shaft: keyed, engagement: 20 }, { ...LIFE, reversing: false }).form;
    expect(key).toBeCloseTo((1.2 * 36 * 0.2 * 14 * 20 * 2.3) / 2, 6);
  });

  it('hold by a set screw what its plastic keeps, or its table with a safety of 4', () => {
    const { ring: _, ...open } = { ...place, shaft: SHAFT };
    const set = gripOf({ setScrew: 'M3', friction: 0.15 }, open, LIFE);
    // M3 head 5.5 on a hole of 3.4, 14.7 mm² at 21.6 MPa: 317 N; 0.9·0.434 of it, friction on 12 mm
    expect(set.setScrew).toBeCloseTo(0.15 * 0.9 * 317.1 * 0.85 * 43_800 ** -0.063 * 12, 0);
    expect(set).toMatchObject({ by: 'set screw', holds: set.setScrew, friction: set.setScrew });
  });
});
