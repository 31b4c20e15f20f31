import { describe, expect, it } from 'vitest';
import { type Check, hard, notJudged, soft, told, valued } from '../../../src/judge/check.js';
import { runChecks } from '../../../src/judge/run-checks.js';
import { asLifted, liftedToo, liftOf, noteLift } from '../../../src/parts/common/lifted.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import type { CarriedDuty, Pull } from '../../../src/sheet/sections/duty.js';
import { exactly } from '../../../src/units/measured.js';
import { nutSheet } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

describe('the force with which work lifts what a nut carries', () => {
  it.each([
    // 120 − 20, and none where more weighs on it; nothing tells what weighs: nothing does
    [{ axis: 'vertical', load: 20, upward: 120 }, 100],
    [{ axis: 'vertical', load: 20, upward: 20 }, 0],
    [{ axis: 'vertical', load: 30, upward: 20 }, 0],
    [{ axis: 'vertical', upward: 20 }, 20],
    [{ load: 5, upward: 20 }, 15],
    [{ load: 5 }, 0],
    // what lies is not lifted
    [{ axis: 'horizontal', load: 5, upward: 20 }, 0],
  ] as [CarriedDuty, number][])('%o: %d N', (duty, force) => {
    expect(liftOf(duty)).toBe(force);
  });

  it('turns the pull over, comes and goes, and is nothing where the weight keeps it down', () => {
    const part = { name: 'x', duty: { axis: 'vertical', load: 20, upward: 120 } as CarriedDuty };
    const lifted = (...pulls: Pull[]) => asLifted({ ...part, pulls });
    expect(lifted('onto')).toMatchObject({ name: 'x', pulls: ['away'], duty: { load: 100, axis: 'horizontal' } });
    expect(lifted('away')?.pulls).toEqual(['onto']);
    expect(lifted('away', 'onto')?.pulls).toEqual(['onto', 'away']);
    expect(asLifted({ duty: { load: 20, upward: 20 }, pulls: ['away'] })).toBeUndefined();
  });

  it('is listed as none where an upright axis tells nothing of it', () => {
    const noted = (duty: CarriedDuty) => {
      const notes = new Assumptions();
      noteLift(duty, notes);
      return notes.list.map(({ field, value }) => [field, value]);
    };
    expect(noted({ axis: 'vertical' })).toEqual([['duty.upward', 0]]);
    expect(noted({ axis: 'vertical', upward: 0 })).toEqual([]);
    expect(noted({ axis: 'horizontal' })).toEqual([]);
    expect(noted({})).toEqual([]);
  });
});

interface Part {
  readonly duty: CarriedDuty;
  readonly pulls: readonly Pull[];
}

/** A check of the load alone, which may be 50 N; of 60 N and more of lift it asks for what is not told. */
const LOAD: Check<Part> = {
  id: 'force',
  group: 'g',
  question: 'q',
  title: 'Force',
  unit: 'N',
  source: 'the test',
  limits: hard({ max: 50 }),
  moves: 'length, duty.load',
  run: ({ duty: { load = 0, dust } }) => (dust && load > 60 ? notJudged('dust') : valued(exactly(load), `${load} N`)),
};

describe('a check that hangs on the load', () => {
  const run = (check: Check<Part>, load: number, upward: number, more: Partial<CarriedDuty> = {}) =>
    runChecks(liftedToo([check], asLifted), { duty: { ...more, axis: 'vertical', load, upward }, pulls: [] })[0];

  it('tells the worse of weight and lift, by its verdict, then by what is left', () => {
    expect(run(LOAD, 20, 120)).toMatchObject({
      word: 'no',
      value: 100,
      message: 'lifted by the work, with 100 N more than weighs on it: 100 N',
      moves: 'length, duty.load, duty.upward',
    });
    expect(run(LOAD, 20, 45)).toMatchObject({ word: 'yes', value: 25 });
    expect(run(LOAD, 20, 35)).toMatchObject({ word: 'yes', value: 20, message: '20 N' });
    expect(run(LOAD, 60, 65)).toMatchObject({ word: 'no', value: 60 });
    expect(run(LOAD, 20, 0)).toMatchObject({ value: 20, message: '20 N' });
    // 20 N either way
    expect(run(LOAD, 20, 40)).toMatchObject({ value: 20, message: '20 N' });
  });

  it.each([
    // a fifth of the one limit is left, a twentieth of the other, though that is more in N
    [{ max: 10 }, 8, { max: 100 }, 95],
    [{ min: 10 }, 12, { min: 100 }, 105],
  ])('takes what has least left of its own limit: %o, %d, %o, %d', (a, first, b, second) => {
    const own = (standing: boolean): Check<Part> => ({
      ...LOAD,
      run: ({ duty }) => {
        const [limits, value] = (duty.load === 20) === standing ? [a, first] : [b, second];
        return valued(exactly(value), `${value}`, hard(limits));
      },
    });
    expect(run(own(true), 20, 120)!.value).toBe(second);
    expect(run(own(false), 20, 120)!.value).toBe(second);
  });

  it('keeps a caution without a figure before one with it', () => {
    const warns: Check<Part> = {
      ...LOAD,
      limits: soft({ max: 5 }),
      run: ({ duty: { load = 0 } }) => (load === 20 ? told('caution', 'stands') : valued(exactly(load), `${load} N`)),
    };
    expect(run(warns, 20, 120)).toMatchObject({ verdict: 'caution', message: 'stands' });
    const passes: Check<Part> = {
      ...warns,
      run: ({ duty }) => (duty.load === 20 ? told('pass', 'stands') : valued(exactly(1), '1')),
    };
    expect(run(passes, 20, 120)).toMatchObject({ verdict: 'pass', value: 1 });
  });

  it('asks what is asked of the lift, and speaks where only the lift does', () => {
    expect(run(LOAD, 20, 120, { dust: 'yes' })).toMatchObject({ word: 'not-told', missing: ['dust'] });
    const above: Check<Part> = {
      ...LOAD,
      run: (design, limits) => (design.duty.load! < 50 ? undefined : LOAD.run(design, limits)),
    };
    expect(run(above, 20, 120)).toMatchObject({ word: 'no', value: 100 });
  });

  it('that names no load is left as it is', () => {
    const other = { ...LOAD, moves: 'body.length, duty.loads' };
    expect(liftedToo([other], asLifted)).toEqual([other]);
  });
});

describe('a nut whose work lifts it', () => {
  const lifted = (id: string, load: number, upward: number, more: object = {}) => {
    const duty = { axis: 'vertical', load, upward, layer_heights: undefined, ...more };
    return findingOf(nutSheet({ duty }), id)!;
  };

  it('bears on its other flank what it would bear on the first: 120 − 20 is five times 20', () => {
    const standing = lifted('thread-pressure', 20, 0).value!;
    expect(lifted('thread-pressure', 20, 120).value).toBeCloseTo(5 * standing, 3);
    expect(lifted('drive-torque', 20, 120).value).toBeCloseTo(5 * lifted('drive-torque', 20, 0).value!, 3);
  });

  it('hangs on its screws where its load stands on the flange: 100 N', () => {
    const standing = { motor: undefined, pull: 'onto' };
    expect(lifted('bolt-clamp', 20, 0, standing).message).toMatch(/^the load presses the flange on its seat/);
    expect(lifted('bolt-clamp', 20, 120, standing).message).toMatch(/^lifted by the work.* against 100 N/);
  });
});
