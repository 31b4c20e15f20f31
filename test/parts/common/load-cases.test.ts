import { describe, expect, it } from 'vitest';
import { limitsInForce } from '../../../src/judge/limits-in-force.js';
import {
  type Borne,
  caseWords,
  judgeCases,
  judgeCrash,
  judgedTemperature,
  type LoadCase,
  type Loaded,
  loadCases,
  missingOf,
  pullsOf,
} from '../../../src/parts/common/load-cases.js';
import { stallForce } from '../../../src/parts/common/stall-force.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import { resolveScrew } from '../../../src/sheet/resolve-screw.js';
import { exactly } from '../../../src/units/measured.js';

const SCREW = resolveScrew({ designation: 'Tr8x2' }, 0.03, new Assumptions());
const both = ['away', 'onto'] as const;
const WARM = { load: 30, temperature: 40, axis: 'vertical' } as const;
// Tr8x2, π·7 = 21.991; greased 0.05: f/cos 15° = 0.05176, (2/7)·(21.991 − 0.05176·2)/(2 + 0.05176·21.991) = 1.9926 N for a N·mm
const STALL = 1.9926;
// dry 0.08: f/cos 15° = 0.08282, (2/7)·(21.991 − 0.08282·2)/(2 + 0.08282·21.991) = 1.6318
const DRY_STALL = 1.6318;
const motor = (torque: number, gear?: number) => ({ motor: { torque, ...(gear === undefined ? {} : { gear }) } });

describe('the force of a stalled motor', () => {
  it('is its torque over lead and least friction, behind its gear', () => {
    expect(stallForce({ duty: motor(100), screw: SCREW })).toBeCloseTo(100 * STALL, 1);
    expect(stallForce({ duty: motor(100, 2), screw: SCREW })).toBeCloseTo(200 * STALL, 1);
    expect(stallForce({ duty: { ...motor(100), grease: 'greased' }, screw: SCREW })).toBeCloseTo(100 * STALL, 1);
    expect(stallForce({ duty: { ...motor(100), grease: 'dry' }, screw: SCREW })).toBeCloseTo(100 * DRY_STALL, 1);
    expect(stallForce({ duty: {}, screw: SCREW })).toBeUndefined();
    expect(stallForce({ duty: { motor: {} }, screw: SCREW })).toBeUndefined();
  });
});

describe('load cases', () => {
  it('pull as told, as known, or either way, which is listed', () => {
    const notes = new Assumptions();
    expect(pullsOf({ pull: 'onto' }, 'onto', notes)).toEqual(['onto']);
    expect(pullsOf({ pull: 'onto' }, undefined, notes)).toEqual(['onto']);
    expect(pullsOf({}, 'away', notes)).toEqual(['away']);
    expect(notes.list).toEqual([]);
    expect(pullsOf({}, undefined, notes)).toHaveLength(2);
    expect(notes.list.map(({ field }) => field)).toEqual(['duty.pull']);
    // told and mounted are at odds: whichever is worse
    expect(pullsOf({ pull: 'onto' }, 'away', notes)).toHaveLength(2);
    expect(notes.list[1]!.why).toMatch(/^told onto, .* goes away: the worse is judged$/);
  });

  it('are the load for its time, and the stall for a moment either way', () => {
    expect(loadCases({ duty: WARM, pulls: ['away'] })).toEqual([{ force: 30, pull: 'away', duration: 'years' }]);
    expect(loadCases({ duty: { ...WARM, axis: 'horizontal' }, pulls: ['onto'] })[0]!.duration).toBe('level');
    expect(loadCases({ duty: { load: 30 }, pulls: ['onto'] }).map(({ duration }) => duration)).toEqual([
      'years',
      'level',
    ]);
    expect(loadCases({ duty: {}, pulls: both, screw: SCREW })).toEqual([]);
    expect(loadCases({ duty: motor(100), pulls: ['away'] })).toEqual([]);
    const stalled = loadCases({ duty: { ...WARM, ...motor(100) }, pulls: ['away'], screw: SCREW });
    expect(stalled.map(({ pull, duration }) => `${pull} ${duration}`).sort()).toEqual([
      'away moment',
      'away years',
      'onto moment',
    ]);
    expect(stalled.at(-1)!.force).toBeCloseTo(100 * STALL, 1);
  });

  it('say what they are', () => {
    expect(caseWords({ force: 30, pull: 'away', duration: 'years' })).toBe('under 30 N standing for years');
    expect(caseWords({ force: 30, pull: 'away', duration: 'moment' })).toBe(
      'under 30 N for a moment, the motor stalled,',
    );
  });

  it('ask for load and temperature', () => {
    expect(missingOf({})).toEqual(['duty.load', 'duty.temperature']);
    expect(missingOf(WARM)).toEqual([]);
    expect(judgedTemperature({})).toBe(23);
    expect(judgedTemperature(WARM)).toBe(40);
  });
});

describe('the case that leaves least', () => {
  const judged = (duty: object, rows: Partial<Record<LoadCase['pull'], readonly [number, number] | undefined>>) =>
    judgeCases({ duty, pulls: both, screw: SCREW } as Loaded, limitsInForce(), {
      borne: ({ pull }): Borne | undefined => {
        const row = rows[pull];
        return row && { value: row[0], allowed: row[1], words: pull };
      },
      cure: 'CURE',
    });
  const value = (away: readonly [number, number], onto: readonly [number, number]) => judged(WARM, { away, onto });

  it('is cured by less heat where nothing is allowed, and by less motor current too where it stalls', () => {
    const words = (duty: Loaded['duty'], allowed: number) => {
      const outcome = judged(duty, { away: [2, allowed] });
      return outcome?.kind === 'value' ? outcome.message : '';
    };
    expect(words(WARM, 0)).toMatch(/; less heat, or a plastic that stands it$/);
    expect(words(WARM, 1)).toMatch(/; CURE$/);
    const stalled = { ...WARM, motor: { torque: 400 } } as Loaded['duty'];
    expect(words(stalled, 1)).toMatch(/CURE$/);
  });

  it('is that of the greatest share', () => {
    // 0.1 and 0.5 of what is allowed, either way round
    expect(value([1, 10], [2, 4])).toMatchObject({ value: exactly(2), limits: { pass: { max: 4 }, fail: { max: 4 } } });
    expect(value([2, 4], [1, 10])).toMatchObject({ value: exactly(2) });
    // nothing asked of nothing is no share; something asked of nothing is more than any
    expect(value([0, 0], [1, 10])).toMatchObject({ value: exactly(1) });
    expect(value([-1, 0], [1, 10])).toMatchObject({ value: exactly(1) });
    expect(value([5, 1], [1, 0])).toMatchObject({ value: exactly(1), limits: { pass: { max: 0 } } });
  });

  it('names its cure only where it fails', () => {
    expect(value([1, 2], [0, 2])!.message).toBe('away; under 30 N standing for years it may bear 2 MPa at 40 °C');
    expect(value([2, 2], [0, 2])!.message).not.toContain('CURE');
    expect(value([3, 2], [0, 2])!.message).toMatch(/; CURE$/);
  });

  it('is told without a load or a temperature only where it fails', () => {
    const stalled = motor(100);
    expect(judged({ ...stalled }, { away: [1, 2] })).toMatchObject({ missing: ['duty.load', 'duty.temperature'] });
    expect(judged({ ...stalled }, { away: [3, 2] })).toMatchObject({ value: exactly(3) });
    expect(judged({ load: 5 }, { away: [1, 2] })).toMatchObject({ missing: ['duty.temperature'] });
    expect(judged({ temperature: 30 }, {})).toMatchObject({ missing: ['duty.load'] });
    expect(judged(WARM, {})).toBeUndefined();
  });
});

describe('a crash against the end', () => {
  const crash = (duty: object, rows: readonly (readonly [string, number])[], screw: typeof SCREW | undefined = SCREW) =>
    judgeCrash({ duty, pulls: both, screw }, 1, () => rows);

  it('is twice the stall, on the weakest that it goes through', () => {
    const asked: { force: number; temperature: number }[] = [];
    judgeCrash({ duty: { ...motor(100), temperature: 50 }, pulls: both, screw: SCREW }, 1, (one) => {
      asked.push(one);
      return [['the thread', 0.5]];
    });
    expect(asked[0]!.force).toBeCloseTo(200 * STALL, 1);
    expect(asked[0]!.temperature).toBe(50);
    const warm = { ...motor(100), temperature: 50 };
    for (const rows of [
      [
        ['a', 2],
        ['b', 0.5],
      ],
      [
        ['b', 0.5],
        ['a', 2],
      ],
    ] as const) {
      const broken = crash(warm, rows)!;
      expect(broken).toMatchObject({ value: exactly(2) });
      // 399 N, of which it bears half
      expect(broken.message).toMatch(
        /^driven against its end the motor gives up to 399 N, .* a may break at 199 N; fit/,
      );
    }
    expect(crash(warm, [['a', 1]])!.message).toMatch(/, which a can bear$/);
  });

  it('is told without a temperature only where it breaks, and asks for the motor and the screw', () => {
    expect(crash(motor(100), [['a', 1]])).toMatchObject({ missing: ['duty.temperature'] });
    expect(crash(motor(100), [['a', 1.1]])).toMatchObject({ value: exactly(1.1) });
    expect(crash({}, [['a', 1.1]])).toMatchObject({ missing: ['duty.motor.torque'] });
    const untold = (duty: object) => judgeCrash({ duty, pulls: both }, 1, () => [['a', 2]]);
    expect(untold(motor(100))).toMatchObject({ missing: ['screw'] });
    expect(untold({})).toMatchObject({ missing: ['screw', 'duty.motor.torque'] });
  });
});
