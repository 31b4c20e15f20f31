import { describe, expect, it } from 'vitest';
import { type Check, hard, notJudged, soft, valued } from '../../../src/judge/check.js';
import { runChecks } from '../../../src/judge/run-checks.js';
import { askedWhereItHangs, askedWhereWorse, type Untold } from '../../../src/parts/common/untold.js';
import { exactly } from '../../../src/units/measured.js';

/** A stress by heat and length, each of which may be untold: it holds the worst that is usual, and the mildest beside it. */
interface Design {
  readonly heat: number;
  readonly length: number;
  readonly mild: { readonly heat?: number; readonly length?: number };
  readonly room?: 'untold';
}

const about = { id: 'stress', group: 'g', question: 'q', title: 'Stress', unit: 'MPa', source: 's', moves: 'm' };
const stress: Check<Design> = {
  ...about,
  limits: hard({ max: 10 }),
  run: ({ heat, length, room }, { pass: { max = 0 } }) =>
    room && heat + length <= max ? notJudged('room') : valued(exactly(heat + length), ''),
};
const untold: readonly Untold<Design>[] = [
  { field: 'heat', milder: (one) => (one.mild.heat === undefined ? undefined : { ...one, heat: one.mild.heat }) },
  {
    field: 'length',
    milder: (one) => (one.mild.length === undefined ? undefined : { ...one, length: one.mild.length }),
  },
];

function found(design: Partial<Design>, { check = stress, limit }: { check?: Check<Design>; limit?: number } = {}) {
  const whole = { heat: 0, length: 0, mild: {}, ...design };
  return runChecks(
    askedWhereItHangs([check], untold),
    whole,
    limit === undefined ? {} : { stress: { max: limit } },
  )[0]!;
}

describe('what was not told', () => {
  it('passes where the worst passes, and fails where the mildest fails, by the figure of the worst', () => {
    expect(found({ heat: 9, mild: { heat: 1 } })).toMatchObject({ word: 'yes', value: 9 });
    expect(found({ heat: 19, mild: { heat: 11 } })).toMatchObject({ word: 'no', value: 19 });
  });

  it('is asked for where the verdict hangs on it, by the limit in force', () => {
    expect(found({ heat: 19, mild: { heat: 9 } })).toMatchObject({ word: 'not-told', missing: ['heat'] });
    expect(found({ heat: 19, mild: { heat: 9 } }, { limit: 20 }).word).toBe('yes');
    expect(found({ heat: 19, mild: { heat: 9 } }, { limit: 8 }).word).toBe('no');
    expect(found({ heat: 19 }).word).toBe('no');
  });

  it('is a caution where both ends are one, and asked for where one end is better', () => {
    const check: Check<Design> = { ...stress, limits: soft({ max: 10 }, { max: 20 }) };
    expect(found({ heat: 15, mild: { heat: 12 } }, { check })).toMatchObject({ word: 'but', value: 15 });
    expect(found({ heat: 15, mild: { heat: 5 } }, { check }).missing).toEqual(['heat']);
    expect(found({ heat: 25, mild: { heat: 15 } }, { check }).missing).toEqual(['heat']);
  });

  it('names of several what changes the verdict by itself, and all where only all of it does', () => {
    const both = { heat: 1, length: 1 };
    expect(found({ heat: 9, length: 2, mild: both }).missing).toEqual(['heat', 'length']);
    expect(found({ heat: 16, length: 3, mild: both }).missing).toEqual(['heat']);
    expect(found({ heat: 16, length: 16, mild: both }).missing).toEqual(['heat', 'length']);
    expect(found({ heat: 16, length: 16, mild: { heat: 1 } }).word).toBe('no');
    // what changes nothing beside the others is not asked for
    const width: Untold<Design> = { field: 'width', milder: (one) => ({ ...one }) };
    const asked = runChecks(askedWhereItHangs([stress], [...untold, width]), { heat: 16, length: 16, mild: both }, {});
    expect(asked[0]!.missing).toEqual(['heat', 'length']);
  });

  it('is not asked for where it changes nothing beside what changes the verdict by itself', () => {
    const width: Untold<Design> = { field: 'width', milder: (one) => ({ ...one }) };
    const both = { heat: 1, length: 1 };
    const asked = runChecks(askedWhereItHangs([stress], [...untold, width]), { heat: 9, length: 2, mild: both }, {});
    expect(asked[0]!.missing).toEqual(['heat', 'length']);
  });

  it('is asked for whole where any two of three change the verdict, and never with what is told', () => {
    const parts = ['a', 'b', 'c', 'told'] as const;
    type Sums = Readonly<Record<(typeof parts)[number], number>>;
    const sum: Check<Sums> = {
      ...about,
      limits: hard({ max: 10 }),
      run: (one) => valued(exactly(one.a + one.b + one.c), ''),
    };
    const fields = parts.map(
      (field): Untold<Sums> => ({
        field,
        milder: (one) => (field === 'told' ? undefined : { ...one, [field]: 0 }),
      }),
    );
    const [asked] = runChecks(askedWhereItHangs([sum], fields), { a: 6, b: 6, c: 6, told: 0 }, {});
    expect(asked!.missing).toEqual(['a', 'b', 'c']);
  });

  it('is asked for with what else is missing', () => {
    expect(found({ heat: 19, mild: { heat: 9 }, room: 'untold' }).missing).toEqual(['heat', 'room']);
    expect(found({ heat: 9, mild: { heat: 5 }, room: 'untold' }).missing).toEqual(['room']);
  });

  it('does not ask where the worst passes, though less were an open question; and asks where it is a caution', () => {
    const open: Check<Design> = {
      ...stress,
      limits: soft({ max: 10 }, { max: 20 }),
      run: ({ heat }) => (heat > 5 ? valued(exactly(heat), '') : notJudged('room')),
    };
    expect(found({ heat: 9, mild: { heat: 1 } }, { check: open })).toMatchObject({ word: 'yes', value: 9 });
    expect(found({ heat: 15, mild: { heat: 1 } }, { check: open }).missing).toEqual(['heat', 'room']);
  });

  it('leaves checks alone that do not speak', () => {
    const silent: Check<Design> = { ...stress, run: ({ heat }) => (heat > 10 ? valued(exactly(heat), '') : undefined) };
    expect(found({ heat: 5, mild: { heat: 1 } }, { check: silent })).toBeUndefined();
    expect(found({ heat: 15, mild: { heat: 1 } }, { check: silent })).toMatchObject({ word: 'no', value: 15 });
  });
});

describe('what is usual', () => {
  const usual = [
    { field: 'heat', worse: (one: Design) => (one.heat === 0 ? { ...one, heat: 9 } : undefined) },
    { field: 'length', worse: (one: Design) => (one.length === 0 ? { ...one, length: 2 } : undefined) },
  ];
  const worded = (design: Partial<Design>, check = stress) =>
    runChecks(askedWhereWorse([check], usual), { heat: 0, length: 0, mild: {}, ...design })[0]!;

  it('passes where the worst that may be passes, by the usual figure', () => {
    expect(worded({ length: 1 })).toMatchObject({ word: 'yes', value: 1 });
    expect(worded({ heat: 1 })).toMatchObject({ word: 'yes', value: 1 });
  });

  it('is asked for where the worst that may be comes to a worse verdict', () => {
    expect(worded({ length: 3 })).toMatchObject({ word: 'not-told', missing: ['heat'] });
    expect(worded({ heat: 9 })).toMatchObject({ word: 'not-told', missing: ['length'] });
    expect(worded({ length: 11 })).toMatchObject({ word: 'no', value: 11 });
  });

  it('is asked for together where only all that may be comes to a worse verdict, without what adds nothing', () => {
    // 9 and 2 keep 10, 11 does not
    expect(worded({})).toMatchObject({ word: 'not-told', missing: ['heat', 'length'] });
    const idle = { field: 'room', worse: (one: Design) => one };
    const [row] = runChecks(askedWhereWorse([stress], [idle, ...usual]), { heat: 0, length: 0, mild: {} });
    expect(row!.missing).toEqual(['heat', 'length']);
    const told = { field: 'told', worse: () => undefined };
    const rising = (by: Readonly<Record<string, number>>) =>
      Object.entries(by).map(([field, more]) => ({
        field,
        worse: (one: Design) => ({ ...one, heat: one.heat + more }),
      }));
    const asked = (by: Readonly<Record<string, number>>) =>
      runChecks(askedWhereWorse([stress], [told, ...rising(by)]), { heat: 0, length: 0, mild: {} })[0]!.missing;
    // any two of three do
    expect(asked({ a: 6, b: 6, c: 6 })).toEqual(['a', 'b', 'c']);
    // each of two does alone, the third never
    expect(asked({ a: 11, b: 11, c: 1 })).toEqual(['a', 'b']);
    expect(asked({ a: 6 })).toBeUndefined();
  });

  it('leaves a check that falls silent at the worst', () => {
    const mild: Check<Design> = {
      ...stress,
      run: ({ heat }) => (heat > 5 ? undefined : valued(exactly(heat), '')),
    };
    expect(worded({ length: 1 }, mild)).toMatchObject({ word: 'yes', value: 0 });
  });

  it('is asked for where the worst that may be is a fail of a caution, and leaves open what is open', () => {
    const check: Check<Design> = { ...stress, limits: soft({ max: 2 }, { max: 10 }) };
    expect(worded({ length: 3 }, check).missing).toEqual(['heat']);
    expect(worded({ length: 3, heat: 1 }, check)).toMatchObject({ word: 'but', value: 4 });
    const open: Check<Design> = { ...stress, run: () => notJudged('room') };
    expect(worded({}, open).missing).toEqual(['room']);
    const opened: Check<Design> = {
      ...stress,
      run: ({ heat }) => (heat > 5 ? valued(exactly(99), '') : notJudged('room')),
    };
    expect(worded({}, opened).missing).toEqual(['room']);
    const silent: Check<Design> = { ...stress, run: ({ heat }) => (heat > 5 ? valued(exactly(99), '') : undefined) };
    expect(worded({}, silent)).toBeUndefined();
  });
});
