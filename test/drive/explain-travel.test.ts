import { describe, expect, it } from 'vitest';
import type { Duty } from '../../src/drive/duty.js';
import { explainTravel } from '../../src/drive/explain-travel.js';
import { SLIPS, type SlipKind } from '../../src/drive/slips.js';
import { InputError } from '../../src/units/faults.js';
import { screw } from './screws.js';

/** A drive as the controller believes it, or as it is. */
interface Belief {
  readonly steps: number;
  readonly microsteps: number;
  readonly gear: number;
  readonly lead: number;
}

const perMm = (b: Belief) => (b.steps * b.microsteps * b.gear) / b.lead;
/** Travel of 100 mm by a controller that believes `told` on a machine that is `real`: counted steps over needed steps. */
const travel = (told: Belief, real: Belief) => (100 * perMm(told)) / perMm(real);

interface Case {
  readonly slip: SlipKind;
  readonly name: string;
  readonly duty?: Duty;
  /** the drive as the user describes it */
  readonly described: Belief;
  readonly told?: Partial<Belief>;
  readonly real?: Partial<Belief>;
}

const lead8: Belief = { steps: 200, microsteps: 16, gear: 1, lead: 8 };
const lead2: Belief = { ...lead8, lead: 2 };
const geared: Belief = { ...lead8, gear: 3 };

const CASES: readonly Case[] = [
  { slip: 'starts-left-out', name: 'Tr8x8(P2)', described: lead8, told: { lead: 2 } },
  { slip: 'starts-left-out', name: 'Tr8x2', described: lead2, real: { lead: 8 } },
  { slip: 'starts-left-out', name: 'Tr8x2', described: lead2, real: { lead: 4 } },
  { slip: 'lead-for-pitch', name: 'Tr8x8(P2)', described: lead8, told: { lead: 32 } },
  { slip: 'lead-for-pitch', name: 'Tr8x8(P2)', described: lead8, real: { lead: 2 } },
  { slip: 'old-screw', name: 'Tr8x2', described: lead2, told: { lead: 8 } },
  { slip: 'starts-miscounted', name: 'Tr8x8(P2)', described: lead8, real: { lead: 4 } },
  { slip: 'microsteps', name: 'Tr8x2', described: lead2, real: { microsteps: 32 } },
  { slip: 'microsteps', name: 'Tr8x2', described: lead2, told: { microsteps: 256 } },
  { slip: 'microsteps', name: 'Tr8x2', described: lead2, real: { microsteps: 1 } },
  { slip: 'motor-angle', name: 'Tr8x2', described: lead2, real: { steps: 400 } },
  { slip: 'motor-angle', name: 'Tr8x2', described: lead2, told: { steps: 400 } },
  { slip: 'gear', name: 'Tr8x8(P2)', duty: { gear: 3 }, described: geared, told: { gear: 1 } },
  { slip: 'gear', name: 'Tr8x8(P2)', duty: { gear: 3 }, described: geared, real: { gear: 1 } },
  { slip: 'gear', name: 'Tr8x8(P2)', duty: { gear: 3 }, described: geared, told: { gear: 1 / 3 } },
  { slip: 'gear', name: 'Tr8x2', described: lead2, real: { gear: 5 } },
  { slip: 'inch-for-mm', name: 'Tr8x2', described: lead2, told: { lead: 2 / 25.4 } },
  { slip: 'inch-for-mm', name: 'Tr8x2', described: lead2, told: { lead: 2 * 25.4 } },
  { slip: 'inch-for-mm', name: 'Acme 1/4-16', described: { ...lead2, lead: 1.5875 }, told: { lead: 16 } },
];

describe('every slip is named from its ratio', () => {
  it.each(CASES)('$slip of $name, told $told, real $real', ({ slip, name, duty = {}, described, told, real }) => {
    const truth = { ...described, ...real };
    const exact = travel({ ...described, ...told }, truth);
    const uncertainty = 0.005 * exact;
    for (const error of [-0.99, -0.4, 0, 0.4, 0.99]) {
      const found = explainTravel({
        commanded: 100,
        measured: exact + error * uncertainty,
        uncertainty,
        screw: screw(name),
        duty,
      });
      expect(found.verdict).toBe('slip');
      const named = found.slips.filter((entry) => entry.slip === slip);
      expect(named.some((entry) => Math.abs(entry.steps_per_mm / perMm(truth) - 1) < 1e-5)).toBe(true);
    }
  });

  it('the cases cover the whole list', () => {
    expect(new Set(CASES.map((entry) => entry.slip))).toEqual(new Set(SLIPS));
  });

  it.each(CASES)('knowing what the controller holds gives one right figure: $slip of $name', (entry) => {
    const { name, duty = {}, described, told, real } = entry;
    const [believed, truth] = [
      { ...described, ...told },
      { ...described, ...real },
    ];
    const measured = travel(believed, truth);
    const found = explainTravel({ commanded: 100, measured, screw: screw(name), duty, stepsPerMm: perMm(believed) });
    expect(found.slips.map((slip) => slip.slip)).toContain(entry.slip);
    for (const slip of found.slips.filter((one) => one.wrong !== 'reading')) {
      expect(slip.steps_per_mm / perMm(truth)).toBeCloseTo(1, 4);
    }
    expect(found.steps_per_mm! / perMm(truth)).toBeCloseTo(1, 4);
    expect(found.factor).toBeCloseTo(100 / measured, 4);
  });
});

describe('slips that share a ratio are all named', () => {
  const kinds = (name: string, measured: number) =>
    new Set(explainTravel({ commanded: 100, measured, screw: screw(name), duty: {} }).slips.map((slip) => slip.slip));

  it('a half: motor angle, microsteps, gear', () => {
    const found = kinds('Tr8x2', 50);
    for (const kind of ['motor-angle', 'microsteps', 'gear']) expect(found).toContain(kind);
  });
  it('a quarter on Tr8x8(P2), 25.1 mm of 100: lead for pitch, microsteps, gear', () => {
    const found = kinds('Tr8x8(P2)', 25.1);
    for (const kind of ['lead-for-pitch', 'microsteps', 'gear']) expect(found).toContain(kind);
    expect(found).not.toContain('motor-angle');
  });
  it('four times on Tr8x8(P2): starts left out, microsteps', () => {
    const found = kinds('Tr8x8(P2)', 401);
    for (const kind of ['starts-left-out', 'microsteps']) expect(found).toContain(kind);
  });
  it('the words name each of them', () => {
    const { words, slips } = explainTravel({ commanded: 100, measured: 25.1, screw: screw('Tr8x8(P2)'), duty: {} });
    for (const slip of slips) expect(words.join('\n')).toContain(slip.words);
  });
});

it('after a swap from lead 8 to Tr8x2 with 400 steps left in place, 25.1 mm of 100: set 1600', () => {
  const found = explainTravel({ commanded: 100, measured: 25.1, screw: screw('Tr8x2'), duty: {} });
  expect(found.slips[0]).toMatchObject({ slip: 'old-screw', controller_has: 400, steps_per_mm: 1600 });
  expect(found.steps_per_mm).toBe(1600);
  expect(found.factor).toBe(4);
});

describe('the screw that was in before is known', () => {
  const swapped = (oldLead: number, name: string, measured: number) =>
    explainTravel({ commanded: 100, measured, screw: screw(name), duty: {}, oldLead });

  it('lead 8 to M8, 400 steps left in place: 100 · 1.25 / 8 = 15.6 mm', () => {
    const found = swapped(8, 'M8', 15.6);
    expect(found.slips[0]).toMatchObject({ slip: 'old-screw', controller_has: 400, steps_per_mm: 2560 });
    expect(found.words.join(' ')).toContain('still set for the old screw: it holds 8 mm a turn; this one has 1.25 mm');
  });
  it('comes first, and is named once', () => {
    const kinds = swapped(8, 'Tr8x2', 25).slips.map(({ slip }) => slip);
    expect(kinds[0]).toBe('old-screw');
    expect(kinds.filter((kind) => kind === 'old-screw')).toHaveLength(1);
  });
  it('explains nothing where both screws travel alike, and must be above 0', () => {
    expect(swapped(2, 'Tr8x2', 100).verdict).toBe('as-told');
    expect(() => swapped(0, 'Tr8x2', 25)).toThrow(/^oldLead: /);
  });
});

describe('no slip', () => {
  it('as told within the error', () => {
    const found = explainTravel({ commanded: 100, measured: 99.9, uncertainty: 0.2, screw: screw('Tr8x2'), duty: {} });
    expect(found).toMatchObject({ verdict: 'as-told', slips: [], factor: 1, steps_per_mm: 1600 });
  });
  it('a little off is play or lead, not a slip', () => {
    const found = explainTravel({ commanded: 100, measured: 98.5, uncertainty: 0.2, screw: screw('Tr8x2'), duty: {} });
    expect(found.verdict).toBe('unexplained');
    expect(found.words.join(' ')).toMatch(/twice as far/);
    expect(found.factor).toBeCloseTo(1 / 0.985, 6);
    // what the controller holds was not told: no figure can be
    expect(found.steps_per_mm).toBeUndefined();
  });
  it('a ratio that nothing explains says so and still gives the figure', () => {
    const found = explainTravel({
      commanded: 100,
      measured: 73,
      uncertainty: 0.1,
      screw: screw('Tr8x2'),
      duty: {},
      stepsPerMm: 1000,
    });
    expect(found).toMatchObject({ verdict: 'unexplained', slips: [] });
    expect(found.steps_per_mm).toBeCloseTo(1000 / 0.73, 3);
  });
  it('travel read in inches leaves the controller alone', () => {
    const found = explainTravel({ commanded: 100, measured: 3.937, screw: screw('Tr8x2'), duty: {}, stepsPerMm: 1600 });
    expect(found.slips).toHaveLength(1);
    expect(found.slips[0]).toMatchObject({ slip: 'inch-for-mm', wrong: 'reading' });
    expect(found).toMatchObject({ factor: 1, steps_per_mm: 1600 });
  });
});

it('sees an axis that moved the wrong way', () => {
  const found = explainTravel({ commanded: 100, measured: -25, screw: screw('Tr8x2'), duty: {} });
  expect(found.reversed).toBe(true);
  expect(found.slips[0]!.slip).toBe('old-screw');
  expect(explainTravel({ commanded: -100, measured: -100, screw: screw('Tr8x2'), duty: {} }).reversed).toBe(false);
});

it('an exact reading needs an exact ratio', () => {
  const at = (measured: number) =>
    explainTravel({ commanded: 100, measured, uncertainty: 0, screw: screw('Tr8x2'), duty: {} });
  expect(at(25).verdict).toBe('slip');
  expect(at(25.01).verdict).toBe('unexplained');
});

it('lists what it assumed', () => {
  const found = explainTravel({ commanded: 100, measured: 50, screw: screw('Tr8x2'), duty: { steps: 200 } });
  expect(found.assumptions.map((a) => a.field)).toEqual(['uncertainty', 'duty.motor.microsteps', 'duty.motor.gear']);
});

it.each([
  ['commanded', 0],
  ['measured', 0],
  ['measured', Number.NaN],
  ['uncertainty', -1],
  ['stepsPerMm', 0],
])('refuses %s %s', (field, value) => {
  const bad = { commanded: 100, measured: 50, screw: screw('Tr8x2'), duty: {}, [field]: value };
  expect(() => explainTravel(bad)).toThrow(InputError);
  expect(() => explainTravel(bad)).toThrow(new RegExp(`^${field}: `));
});
