import { describe, expect, it } from 'vitest';
import type { Shaft } from '../../../src/parts/common/bore.js';
import type { ClampRing } from '../../../src/parts/common/clamp-ring.js';
import { gripCure, hopelessWords, type WeakGrip } from '../../../src/parts/common/grip-cure.js';
import { exactly } from '../../../src/units/measured.js';
import { closedByHand, pressedByHand } from '../../support/clamp-by-hand.js';

/** ABS of the worked example, in round figures. */
const MATERIAL = {
  name: 'abs',
  tensile: 36,
  tensileAcross: 18,
  shear: 20,
  modulus: 2000,
  heat: { glass: 103 },
  standingLimit: 75,
  shares: { hour: 0.42, thousandHours: 0.28, years: 0.2 },
  creep: { hour: 0.85, exponent: 0.063, strain: 0.007 },
  stiffness: [],
} as const;
const SHAFT: Shaft = { form: 'round', diameter: exactly(8) };
const BORE = { form: 'round', diameter: 8 } as const;
/** The ring of a hub of 34 mm on 8 mm: its wall 4 to 17 mm. */
const RING: ClampRing = { radius: 10.5, thickness: 13, offset: 7.4, length: 40, counted: 1 };
const WEAK: WeakGrip = {
  section: 'motor_hub',
  grip: { clamp: { screw: 'M3', count: 1, washers: false }, friction: 0.15 },
  place: { shaft: SHAFT, engagement: 40, play: 0.05, ring: RING },
  bore: BORE,
  outside: 34,
  slit: { length: 40, web: false },
  life: { material: MATERIAL, temperature: 23, retighten: false, reversing: true },
};

/** Seats of clamp screws by ISO 4762, 4032, 7089 and medium holes, mm: head, nut across flats, washer, hole. */
const SCREWS = {
  M3: { head: 5.5, nut: 5.5, washer: 7, hole: 3.4 },
  M6: { head: 10, nut: 10, washer: 12, hole: 6.6 },
};

/**
 * What a clamp holds at the end of five years, by hand: F = c·(0.9·F0 − Fs), T = µ·F·d times the lever, with F0 by 0.5·1.2·36 MPa on
 * the smaller seat, the screws 1.7 mm and half a hole beside the bore.
 */
function holds(
  screw: keyof typeof SCREWS,
  { count = 1, washers = false, again = false, friction = 0.15, outer = 17 } = {},
): number {
  const { head, nut, washer, hole } = SCREWS[screw];
  const round = (across: number) => (Math.PI / 4) * across ** 2;
  const full = washers ? round(washer) : Math.min(round(head), (Math.sqrt(3) / 2) * nut ** 2);
  const preload = count * 0.5 * 1.2 * 36 * (full - round(hole));
  const [R, h, e, L] = [(4 + outer) / 2, outer - 4, 4 + 1.7 + hole / 2, 40];
  const closing = closedByHand({ R, h, e, L, E: 2000, play: 0.05 });
  const kept = (hours: number) => 0.85 * hours ** -0.063;
  const c = again ? kept(43_800) + (1 - kept(24)) * kept(43_800 - 24) : kept(43_800);
  return friction * c * (0.9 * preload - closing) * pressedByHand({ R, h, e }) * 8;
}

const said = (torque: number, weak: Partial<WeakGrip> = {}) => gripCure({ ...WEAK, ...weak }, torque);
const rounded = (torque: number) => `${Math.round(torque)} N·mm`;

describe('what would hold more, the least to do first', () => {
  it('is no change where it holds already, which asks for a longer hub', () => {
    expect(said(holds('M3') - 0.1)).toBe(`a longer hub (motor_hub.length) would hold ${rounded(holds('M3'))}`);
  });

  it('is a second tightening, then washers, then both', () => {
    const [again, wide, both] = [{ again: true }, { washers: true }, { washers: true, again: true }].map((how) =>
      holds('M3', how),
    ) as [number, number, number];
    expect(said(holds('M3') + 0.1)).toBe(`one retightening (retighten: yes) would hold ${rounded(again)}`);
    expect(said(again + 0.1)).toBe(
      `washers under head and nut (motor_hub.clamp: {screw: M3, count: 1, washers: yes}) would hold ${rounded(wide)}`,
    );
    expect(said(wide + 0.1)).toBe(
      `washers under head and nut (motor_hub.clamp: {screw: M3, count: 1, washers: yes}) and one retightening (retighten: yes) would hold ${rounded(both)}`,
    );
  });

  it('is two screws before larger ones, with what they need said in full', () => {
    const both = holds('M3', { washers: true, again: true });
    const two = holds('M3', { count: 2, washers: true });
    expect(said(both + 0.1)).toBe(
      `two M3 clamp screws and washers under head and nut (motor_hub.clamp: {screw: M3, count: 2, washers: yes}) would hold ${rounded(two)}`,
    );
    const most = holds('M3', { count: 2, washers: true, again: true });
    expect(said(most + 0.1)).toMatch(/^(?:one|two) M[456] clamp screws?[ (]/);
  });

  it('is as much as the sheet allows already: what is done is not asked again', () => {
    const life = { ...WEAK.life, retighten: true };
    const grip = { ...WEAK.grip, clamp: { screw: 'M3', count: 1, washers: true } } as const;
    const now = holds('M3', { washers: true, again: true });
    const told = said(now + 0.1, { life, grip })!;
    expect(told).toBe(
      `two M3 clamp screws (motor_hub.clamp: {screw: M3, count: 2, washers: yes}) would hold ${rounded(holds('M3', { count: 2, washers: true, again: true }))}`,
    );
  });

  it('is nothing where two M6 with washers, tightened again, do not hold it', () => {
    // their washers want a hub of 40 mm
    const wide = { outside: 40, place: { ...WEAK.place, ring: { ...RING, radius: 12, thickness: 16 } } };
    const most = holds('M6', { count: 2, washers: true, again: true, outer: 20 });
    expect(said(most - 0.1, wide)).toMatch(/^two M6 clamp screws and washers/);
    expect(said(most + 0.1, wide)).toBeUndefined();
  });

  it('is taken at the torque itself', () => {
    const now = gripTold(said(holds('M3') - 1)!);
    expect(now).toBe(Math.round(holds('M3')));
  });
});

const gripTold = (words: string) => Number(/would hold (\d+) N·mm/.exec(words)![1]);

describe('a screw held over its crests', () => {
  const greasy = {
    grip: { ...WEAK.grip, friction: 0.05 },
    place: { ...WEAK.place, shaft: { ...SHAFT, crests: true as const } },
  };

  it('is washed free of grease before anything else: 0.15 for 0.05', () => {
    expect(said(holds('M3', { friction: 0.05 }) + 0.1, greasy)).toBe(
      `a screw free of grease (motor_hub.degreased: yes) would hold ${rounded(holds('M3'))}`,
    );
    const wide = holds('M3', { friction: 0.05, washers: true });
    expect(said(wide - 0.1, greasy)).toMatch(/^washers under head and nut \(.*\) would hold/);
    expect(said(wide + 0.1, greasy)).toBe(
      `washers under head and nut (motor_hub.clamp: {screw: M3, count: 1, washers: yes}) and a screw free of grease (motor_hub.degreased: yes) would hold ${rounded(holds('M3', { washers: true }))}`,
    );
  });

  it('keeps a friction that somebody measured, high or low', () => {
    const measured = (friction: number) =>
      said(holds('M3', { friction }) + 0.1, { ...greasy, grip: { ...WEAK.grip, friction } });
    expect(measured(0.3)).toMatch(/^one retightening \(retighten: yes\) would/);
    expect(measured(0.1)).toBe(
      `one retightening (retighten: yes) would hold ${rounded(holds('M3', { friction: 0.1, again: true }))}`,
    );
  });

  it('need not be a screw: a smooth shaft may have been left greasy too', () => {
    expect(said(holds('M3', { friction: 0.05 }) + 0.1, { ...greasy, place: WEAK.place })).toMatch(/degreased: yes/);
  });
});

describe('room for a cure', () => {
  it('is told where the hub is too thin, or its slit too short beside a web', () => {
    // M3 without washers 10.2 mm from its end and 10.5 mm from the web
    const short = { slit: { length: 10, web: true }, place: { ...WEAK.place, ring: { ...RING, counted: 0 } } };
    const head = 3 + 0.09 + 1.6 + 0.3;
    const longer = Number(/, ([\d.]+) mm longer$/.exec(said(1, short)!)![1]);
    expect(longer).toBeCloseTo(head + 10.5 - 10, 1);
    expect(said(1)).not.toMatch(/longer$/);
    const thin = said(1, { outside: 20 })!;
    const outside = Number(/, with an outside of ([\d.]+) mm or more$/.exec(thin)![1]);
    expect(outside).toBeGreaterThan(20);
    expect(said(1, { outside })).not.toMatch(/outside/);
  });

  it('is that of a slit all through where the body has none yet', () => {
    const { slit: _, ...bare } = { ...WEAK, place: { ...WEAK.place, engagement: 15 } };
    expect(gripCure(bare, 1)).toBe(gripCure({ ...bare, slit: { length: 15, web: false } }, 1));
  });

  it('may be nowhere', () => {
    expect(hopelessWords(WEAK)).toBe(
      'no clamp of abs up to two M6 holds it on 8 mm: use metal hubs with the printed insert (leave both shafts out of the sheet, give hubs.outside_diameter and jaws as measured), a thicker shaft, a shaft with a flat or a key, less heat, or a stronger material',
    );
    // a collar or a sleeve has no insert to keep
    expect(hopelessWords({ ...WEAK, section: 'hold' })).toContain('use a metal one, a thicker shaft');
    const flat = { ...WEAK.place, shaft: { ...SHAFT, form: 'd' as const } };
    expect(hopelessWords({ ...WEAK, place: flat })).not.toContain('a flat or a key');
  });

  it('of a hub without a clamp is sought from the smallest screw on', () => {
    const bare = { grip: { friction: 0.15 } };
    expect(said(holds('M3') - 1, bare)).toBe(
      `one M3 clamp screw (motor_hub.clamp: {screw: M3, count: 1, washers: no}) would hold ${rounded(holds('M3'))}`,
    );
  });
});
