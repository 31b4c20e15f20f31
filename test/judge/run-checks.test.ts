import { describe, expect, it } from 'vitest';
import {
  type Bounds,
  type Check,
  type Finding,
  hard,
  notJudged,
  type Outcome,
  soft,
  told,
  valued,
} from '../../src/judge/check.js';
import { limitsInForce } from '../../src/judge/limits-in-force.js';
import { finding, runChecks, verdictOf, worst } from '../../src/judge/run-checks.js';
import { exactly, plusMinus } from '../../src/units/measured.js';

const FACTS = {
  id: 'gap',
  group: 'fit',
  question: 'goes-on',
  title: 'Gap',
  unit: 'mm',
  source: 'a book',
  moves: 'gap',
};

describe('finding', () => {
  it('states value, ends, limits, room and half-width', () => {
    expect(finding({ ...FACTS, limits: soft({ min: 1 }, { min: 0.5 }) }, valued(plusMinus(1.2, 0.1), 'wide'))).toEqual({
      ...FACTS,
      verdict: 'pass',
      word: 'yes',
      value: 1.2,
      least: 1.1,
      most: 1.3,
      limit: { min: 1 },
      fail_limit: { min: 0.5 },
      margin: 0.2,
      uncertainty: 0.1,
      message: 'wide',
    });
  });

  it('states the fail limit where it is the limit, and null where there is none', () => {
    expect(finding({ ...FACTS, limits: hard({ min: 1 }) }, valued(exactly(1), '')).fail_limit).toEqual({ min: 1 });
    expect(finding({ ...FACTS, limits: soft({ min: 1 }) }, valued(exactly(1), '')).fail_limit).toBeNull();
    expect(finding(FACTS, valued(exactly(1), ''))).toMatchObject({ limit: {}, fail_limit: null, margin: null });
    expect(finding(FACTS, told('pass', ''))).toMatchObject({
      limit: null,
      fail_limit: null,
      margin: null,
      value: null,
    });
  });

  it.each([Infinity, -Infinity])('judges a value of %s, and states no figure that a report could not hold', (value) => {
    const found = finding({ ...FACTS, limits: hard({ min: 0, max: 9 }) }, valued(exactly(value), 'nothing carries it'));
    expect(found).toMatchObject({ verdict: 'fail', word: 'no', value: null, margin: null, limit: { min: 0, max: 9 } });
    expect(Object.values(found)).not.toContain(Number.NaN);
    expect([found.least, found.most, found.uncertainty]).toEqual([undefined, undefined, 0]);
    expect(finding(FACTS, told('fail', '', value)).value).toBeNull();
  });

  it('states no figure where one end alone has no bound', () => {
    const ends = valued({ least: 1, likely: 2, most: Infinity }, '');
    expect(finding({ ...FACTS, limits: soft({ max: 9 }) }, ends)).toMatchObject({
      verdict: 'caution',
      word: 'perhaps',
      value: null,
      margin: null,
    });
  });

  it('names only the bounds that there are', () => {
    expect(finding({ ...FACTS, limits: hard({ min: 1 }) }, valued(exactly(1), '')).limit).toStrictEqual({ min: 1 });
    expect(finding({ ...FACTS, limits: hard({ max: 1 }) }, valued(exactly(1), '')).limit).toStrictEqual({ max: 1 });
  });

  it('a value that is no number is a fault of our own', () => {
    expect(() => finding({ ...FACTS, limits: hard({ min: 0 }) }, valued(exactly(Number.NaN), ''))).toThrow(
      'gap: its value is not a number',
    );
    expect(() => finding(FACTS, told('fail', '', Number.NaN))).toThrow('gap: its value is not a number');
    const end = valued({ least: 1, likely: 2, most: Number.NaN }, '');
    expect(() => finding({ ...FACTS, limits: hard({ min: 0 }) }, end)).toThrow('gap: its value is not a number');
  });

  it.each([
    ['pass', 'yes'],
    ['caution', 'but'],
    ['fail', 'no'],
  ] as const)('says of what is told as %s: %s', (verdict, word) => {
    expect(finding(FACTS, told(verdict, 'so it is', 4))).toMatchObject({
      verdict,
      word,
      value: 4,
      message: 'so it is',
    });
  });

  it('names what was not told, as data', () => {
    expect(finding(FACTS, notJudged('duty.load'))).toMatchObject({
      verdict: 'caution',
      word: 'not-told',
      missing: ['duty.load'],
      message: 'not judged: duty.load is missing',
      value: null,
    });
    expect(finding(FACTS, notJudged('duty.span', 'duty.ends')).message).toBe(
      'not judged: duty.span and duty.ends are missing',
    );
  });

  it('puts the bounds of a sheet in place of its own, and says so', () => {
    const changed = finding({ ...FACTS, limits: hard({ min: 1 }) }, valued(exactly(0.8), ''), { min: 0.5 });
    expect(changed).toMatchObject({
      verdict: 'pass',
      limit: { min: 0.5 },
      fail_limit: { min: 0.5 },
      replaced_limit: { min: 1 },
      source: 'the sheet (a book replaced)',
    });
  });

  it('tells what a part comes to by the limit that the sheet replaced, where that is worse', () => {
    const by = (value: number, change: Bounds) =>
      finding({ ...FACTS, limits: soft({ min: 1 }, { min: 0.5 }) }, valued(exactly(value), ''), change).usual_verdict;
    expect([by(0.4, { min: 0.3 }), by(0.8, { min: 0.3 })]).toEqual(['fail', 'caution']);
    expect([by(1.2, { min: 0.3 }), by(1.2, { min: 2 }), by(0.4, { min: 0.45 })]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('lets the limits of an outcome go before those of the check', () => {
    const own = valued(exactly(3), '', hard({ max: 2 }));
    expect(finding({ ...FACTS, limits: hard({ max: 5 }) }, own)).toMatchObject({ verdict: 'fail', limit: { max: 2 } });
  });

  it('carries the marks of its check, and no others', () => {
    expect(finding({ ...FACTS, grave: true }, told('pass', ''))).toMatchObject({ grave: true });
    expect(finding({ ...FACTS, trifle: true }, told('pass', ''))).toMatchObject({ trifle: true });
    const plainly = finding({ ...FACTS, grave: false }, told('pass', ''));
    expect(plainly).not.toHaveProperty('grave');
    expect(plainly).not.toHaveProperty('trifle');
  });
});

it('an outcome that is told has a value only where one is given', () => {
  expect(told('pass', 'so it is')).toStrictEqual({ kind: 'told', verdict: 'pass', message: 'so it is' });
});

describe('runChecks', () => {
  const words: Check<number> = {
    ...FACTS,
    limits: hard({ min: 3 }),
    run: (design, { pass }) => valued(exactly(design), `at least ${pass.min}`),
  };
  const hanging: Check<number> = {
    ...FACTS,
    id: 'twice',
    run: (design, { of }) => {
      const own = hard({ max: 2 * design });
      return valued(exactly(design), `at most ${of(own).pass.max}`, own);
    },
  };
  const silent: Check<number> = { ...FACTS, id: 'silent', run: () => undefined };

  it('leaves out what does not apply, and keeps the order', () => {
    expect(runChecks([hanging, silent, words], 4).map(({ id }) => id)).toEqual(['twice', 'gap']);
  });

  it('hands on the limits in force, so that messages are worded from them', () => {
    const rows = runChecks([words, hanging], 4, { gap: { min: 5 }, twice: { max: 9 } });
    expect(rows).toMatchObject([
      { message: 'at least 5', verdict: 'fail', replaced_limit: { min: 3 } },
      { message: 'at most 9', verdict: 'pass', limit: { max: 9 }, replaced_limit: { max: 8 } },
    ]);
  });
});

describe('verdictOf', () => {
  const limits = hard({ max: 5 });
  const verdict = (outcome: Outcome, change?: Bounds) => verdictOf({ limits }, outcome, limitsInForce(limits, change));

  it('is what is told, and a caution where something is missing', () => {
    for (const said of ['pass', 'caution', 'fail'] as const) expect(verdict(told(said, '', 9))).toBe(said);
    expect(verdict(notJudged('duty.load'))).toBe('caution');
  });

  it('judges a value by the limits of its outcome, else by those of its check, else passes it', () => {
    expect(verdict(valued(exactly(6), ''))).toBe('fail');
    expect(verdict(valued(exactly(5), ''))).toBe('pass');
    expect(verdict(valued(exactly(6), '', soft({ max: 4 }, { max: 7 })))).toBe('caution');
    expect(verdict(valued(exactly(6), '', hard({ max: 7 })))).toBe('pass');
    expect(verdictOf({}, valued(exactly(6), '', hard({ max: 3 })), limitsInForce())).toBe('fail');
    expect(verdictOf({}, valued(exactly(6), ''), limitsInForce())).toBe('pass');
  });

  it("puts the sheet's bounds in the place of either", () => {
    expect(verdict(valued(exactly(6), ''), { max: 6 })).toBe('pass');
    expect(verdict(valued(exactly(6), '', hard({ max: 9 })), { max: 4 })).toBe('fail');
  });

  it('agrees with the finding of the same outcome', () => {
    const outcomes = [told('caution', ''), notJudged('x'), ...[3, 5, 6].map((one) => valued(plusMinus(one, 0.5), ''))];
    for (const outcome of outcomes)
      for (const change of [undefined, { max: 3 }])
        expect(verdict(outcome, change)).toBe(finding({ ...FACTS, limits }, outcome, change).verdict);
  });
});

describe('worst', () => {
  const row = (verdict: Finding['verdict'], accepted?: string) => (accepted ? { verdict, accepted } : { verdict });

  it.each([
    [[], 'pass'],
    [[row('pass')], 'pass'],
    [[row('pass'), row('caution'), row('pass')], 'caution'],
    [[row('fail'), row('caution')], 'fail'],
    [[row('pass'), row('fail', 'trial only')], 'caution'],
    [[row('fail', 'trial only'), row('fail')], 'fail'],
    [[row('fail', 'trial only'), row('caution')], 'caution'],
    [[row('pass', 'trial only')], 'pass'],
  ] as const)('of %o is %s', (rows, verdict) => {
    expect(worst(rows)).toBe(verdict);
  });
});
