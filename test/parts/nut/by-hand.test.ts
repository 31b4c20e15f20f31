import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check, design } from '../../../src/index.js';
import { nutSheet } from '../../support/nut-sheets.js';

/**
 * What an engineer would work out on paper for a Tr thread, sharing nothing with the checks: strength at 23 °C, share for
 * years and for 1,000 hours, fall with heat and the temperature above which nothing stands (published ranges and PVC
 * pipe derating, by distance to the glass transition; nylon and acetal by an exponential), lasting PV dry, top speed.
 */
const BY_HAND = {
  pla: { strength: 50, years: 0.17, hours: 0.25, glass: 58, limit: 45, pv: 0.025, speed: 100 },
  petg: { strength: 45, years: 0.2, hours: 0.28, glass: 70, limit: 52, pv: 0.03, speed: 150 },
  abs: { strength: 36, years: 0.2, hours: 0.28, glass: 103, limit: 75, pv: 0.03, speed: 200 },
  pc: { strength: 60, years: 0.2, hours: 0.25, glass: 147, limit: 105, pv: 0.03, speed: 200 },
  pa12: { strength: 42, years: 0.25, hours: 0.3, tau: 70, limit: 80, pv: 0.1, speed: 400 },
  pom: { strength: 45, years: 0.2, hours: 0.28, tau: 52, limit: 88, pv: 0.1, speed: 500 },
} as const;
type Name = keyof typeof BY_HAND;
/** Short fall of strength with heat of those without a glass transition above the room's, by an exponential. */
const SHORT = { pa12: 85, pom: 72 };

function standing(name: Name, temperature: number, axis: string): number {
  const row = BY_HAND[name];
  if (temperature > row.limit) return 0;
  const warm = Math.max(0, temperature - 23);
  const fall = 'tau' in row ? Math.exp(-warm / row.tau) : (1 - warm / (row.glass - 23)) ** 1.5;
  if (axis === 'vertical') return row.strength * row.years * fall;
  // a level axis is pushed to and fro besides: a fifth, and the short fall with heat
  const short = 'tau' in row ? Math.exp(-warm / SHORT[name as 'pa12' | 'pom']) : Math.sqrt(fall);
  return row.strength * Math.min(row.hours * fall, 0.2 * short);
}

const sheets = fc.record({
  screw: fc.constantFrom([8, 2] as const, [10, 2] as const, [12, 3] as const, [16, 4] as const),
  material: fc.constantFrom(...(Object.keys(BY_HAND) as Name[])),
  temperature: fc.integer({ min: 15, max: 95 }),
  load: fc.integer({ min: 2, max: 900 }),
  feed: fc.integer({ min: 1, max: 60 }),
  length: fc.integer({ min: 12, max: 30 }),
  axis: fc.constantFrom('vertical', 'horizontal'),
  grease: fc.constantFrom('dry', 'greased'),
});

describe('no check of a nut is more generous than a hand calculation', () => {
  it('whatever the load, heat, speed and plastic', () => {
    fc.assert(
      fc.property(sheets, ({ screw: [major, pitch], material, temperature, load, feed, length, axis, grease }) => {
        const sheet = nutSheet({
          screw: `Tr${major}x${pitch}`,
          body: { diameter: major + 12, length },
          flange: { diameter: major + 32 },
          holes: { circle: major + 20 },
          material,
          duty: { temperature, load, feed, axis, grease, moving: undefined, on_time: undefined, cycle: undefined },
        });
        const verdicts = new Map(check(design(sheet)).checks.map((row) => [row.id, row.verdict]));
        const passes = (id: string) => verdicts.get(id) === 'pass';
        // half of the turns; root at the nut's major, contact from nut minor to screw major, at 0.3 and 0.1 of clearance
        const [d2, root, minor] = [major - pitch / 2, major + 0.8, major - pitch + 0.3];
        // lead-ins of 0.5 mm past the thread take its ends, down to the middle of the contact
        const arm = (root - (minor + major) / 2) / 2;
        const turns = (length - 2 * (0.5 + arm)) / pitch / 2;
        const flank = Math.PI * d2 * ((major - minor) / 2) * turns;
        const width = pitch / 2 - 0.1 + (root - d2 - 0.3) * Math.tan(Math.PI / 12);
        const bending = (6 * load * arm) / (Math.PI * root * width ** 2 * turns);
        const bears = standing(material, temperature, axis) * (1 + 1e-9);
        if (passes('thread-bending')) expect(bending).toBeLessThanOrEqual(bears);
        if (passes('creep')) expect(load / flank).toBeLessThanOrEqual(1.2 * bears);
        const speed = feed * Math.hypot(1, (Math.PI * d2) / pitch);
        const { pv, limit, speed: fastest } = BY_HAND[material];
        const lasting = pv * (grease === 'greased' ? 1.3 : 1) * Math.min(1, (limit - temperature) / (limit - 23));
        if (passes('wear-pv')) expect(((load / flank) * speed) / 1000).toBeLessThanOrEqual(lasting + 1e-9);
        if (passes('wear-peak')) expect(((load / flank) * speed) / 1000).toBeLessThanOrEqual(3 * lasting + 1e-9);
        if (passes('wear-speed')) expect(speed).toBeLessThanOrEqual(fastest);
      }),
      { numRuns: 30, seed: 13 },
    );
  });

  it.each([
    ['a hot nut', { duty: { temperature: 81 } }],
    ['a fast nut', { duty: { feed: 60 } }],
    ['a soft plastic near its limit', { material: 'pla', duty: { temperature: 46 } }],
    ['a load beyond a lasting one', { duty: { load: 800, motor: { torque: '4 N m' } } }],
    ['a missing load', { duty: { load: undefined } }],
    ['a missing temperature', { duty: { temperature: undefined } }],
    ['a missing feed', { duty: { feed: undefined } }],
    ['a missing motor', { duty: { motor: undefined } }],
    ['a thin far screw', { duty: { span: 1500 } }],
    ['rests untold', { duty: { load: 150, cycle: undefined } }],
    ['grit', { duty: { dust: 'yes' } }],
    ['polycarbonate in grease', { material: 'pc' }],
  ])('%s is no clean pass', (_, changes) => {
    const rows = check(design(nutSheet(changes))).checks.filter(({ id }) =>
      /^(thread|creep|wear|grease|drive)/.test(id),
    );
    const sound = check(design(nutSheet())).checks.filter(({ verdict }) => verdict !== 'pass');
    const known = new Set(sound.map(({ id }) => id));
    expect(rows.some(({ id, verdict }) => verdict !== 'pass' && !known.has(id))).toBe(true);
  });
});
