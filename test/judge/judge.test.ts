import { describe, expect, it } from 'vitest';
import { type Bounds, hard, type Limits, soft } from '../../src/judge/check.js';
import { judge, keeps, margin, wordOf } from '../../src/judge/judge.js';
import { exactly, type Measured, plusMinus } from '../../src/units/measured.js';

const LEAST = hard({ min: 2 });
const MOST = hard({ max: 2 });
const WISH = soft({ max: 10 }, { max: 20 });
const SOFT_ONLY = soft({ min: 1, max: 3 });

describe('judge and wordOf', () => {
  it.each<[string, Measured, Limits, string, string]>([
    ['on a hard least', exactly(2), LEAST, 'pass', 'yes'],
    ['rounding below a hard least', exactly(2 - 0.5e-9), LEAST, 'pass', 'yes'],
    ['just below a hard least', exactly(2 - 2e-9), LEAST, 'fail', 'no'],
    ['on a hard most', exactly(2), MOST, 'pass', 'yes'],
    ['rounding above a hard most', exactly(2 + 0.5e-9), MOST, 'pass', 'yes'],
    ['just above a hard most', exactly(2 + 2e-9), MOST, 'fail', 'no'],
    ['likely on, least below', plusMinus(2, 0.1), LEAST, 'caution', 'perhaps'],
    ['likely on, most above', plusMinus(2, 0.1), MOST, 'caution', 'perhaps'],
    ['likely below, most inside', plusMinus(1.9, 0.5), LEAST, 'fail', 'no'],
    ['least end on the limit', plusMinus(2.1, 0.1), LEAST, 'pass', 'yes'],
    ['inside a wish', exactly(9), WISH, 'pass', 'yes'],
    ['on a wish', exactly(10), WISH, 'pass', 'yes'],
    ['a wish crossed by the uncertainty', plusMinus(9.9, 0.2), WISH, 'caution', 'perhaps'],
    ['outside a wish', exactly(11), WISH, 'caution', 'but'],
    ['outside a wish, one end inside', plusMinus(10.1, 0.2), WISH, 'caution', 'but'],
    ['outside a wish, on the fail limit', exactly(20), WISH, 'caution', 'but'],
    ['outside a wish, the fail limit crossed', plusMinus(19.9, 0.2), WISH, 'caution', 'perhaps'],
    ['outside the fail limit', exactly(20.1), WISH, 'fail', 'no'],
    ['below two-sided wishes', exactly(0.9), SOFT_ONLY, 'caution', 'but'],
    ['far above wishes without a fail limit', exactly(300), SOFT_ONLY, 'caution', 'but'],
    ['no limits at all', exactly(5), { pass: {} }, 'pass', 'yes'],
  ])('%s', (_, value, limits, verdict, word) => {
    expect(judge(value, limits)).toBe(verdict);
    expect(wordOf(value, limits)).toBe(word);
  });
});

describe('margin and keeps', () => {
  it.each<[number, Bounds, number | undefined]>([
    [3, { min: 1 }, 2],
    [3, { max: 2 }, -1],
    [3, { min: 1, max: 4 }, 1],
    [1.5, { min: 1, max: 4 }, 0.5],
    [0, { min: 1, max: 4 }, -1],
    [3, {}, undefined],
  ])('of %d within %o is %s', (value, bounds, room) => {
    expect(margin(value, bounds)).toBe(room);
    expect(keeps(value, bounds)).toBe(room === undefined || room >= 0);
  });
});
