import { describe, expect, it } from 'vitest';
import { hard, type Limits, soft } from '../../src/judge/check.js';
import { isReplaced, limitsInForce } from '../../src/judge/limits-in-force.js';

describe('limitsInForce', () => {
  it.each<[string, Limits, object, Limits]>([
    ['a hard limit moves whole', hard({ min: 2 }), { min: 1 }, hard({ min: 1 })],
    ['a bound that the check has not is left out', hard({ min: 2 }), { max: 9 }, hard({ min: 2 })],
    ['one side of two', soft({ min: 1, max: 3 }), { max: 4 }, soft({ min: 1, max: 4 })],
    [
      'a stricter wish leaves the fail limit',
      soft({ max: 10 }, { max: 20 }),
      { max: 5 },
      soft({ max: 5 }, { max: 20 }),
    ],
    [
      'a wish past the fail limit takes it along',
      soft({ max: 10 }, { max: 20 }),
      { max: 30 },
      soft({ max: 30 }, { max: 30 }),
    ],
    ['the same from below', soft({ min: 10 }, { min: 5 }), { min: 2 }, soft({ min: 2 }, { min: 2 })],
    ['a lower wish above the fail limit', soft({ min: 10 }, { min: 5 }), { min: 7 }, soft({ min: 7 }, { min: 5 })],
    [
      'a fail limit on one side only',
      { pass: { min: 1, max: 3 }, fail: { min: 0.5 } },
      { max: 9 },
      { pass: { min: 1, max: 9 }, fail: { min: 0.5 } },
    ],
  ])('%s', (_, own, change, expected) => {
    const { of, ...limits } = limitsInForce(own, change);
    expect(limits).toEqual(expected);
    expect(of(own)).toEqual(expected);
  });

  it('keeps a fail limit on a side that the wish has not', () => {
    const own: Limits = { pass: { min: 1 }, fail: { min: 0.5, max: 9 } };
    const { pass, fail } = limitsInForce(own, { min: 2 });
    expect({ pass, fail }).toStrictEqual({ pass: { min: 2 }, fail: { min: 0.5, max: 9 } });
  });

  it('names no bound that is not there', () => {
    expect(limitsInForce(soft({ min: 2 }), { min: 1 }).pass).toStrictEqual({ min: 1 });
    expect(limitsInForce(soft({ max: 2 }), { max: 1 }).pass).toStrictEqual({ max: 1 });
  });

  it('without a change is the limits themselves', () => {
    const { of, pass, fail } = limitsInForce(hard({ max: 3 }));
    expect({ pass, fail }).toEqual(hard({ max: 3 }));
    expect(of(soft({ min: 2 }))).toEqual({ pass: { min: 2 } });
    expect(limitsInForce().pass).toEqual({});
  });
});

it('stand in place of a check’s own where either bound is another', () => {
  expect(isReplaced({ min: 1, max: 2 }, { min: 1, max: 2 })).toBe(false);
  expect(isReplaced({ min: 1, max: 2 }, { min: 1, max: 3 })).toBe(true);
  expect(isReplaced({ min: 1, max: 2 }, { min: 0, max: 2 })).toBe(true);
  expect(isReplaced({}, {})).toBe(false);
});
