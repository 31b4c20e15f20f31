import { describe, expect, it } from 'vitest';
import { figureOf, type Known, left, missingOf, told, total } from '../../src/axis/known.js';
import { plusMinus } from '../../src/units/measured.js';

const UNKNOWN: Known = { missing: ['lengths.clear'] };

describe('a length that may not be known', () => {
  it('is what a field tells, a plain number without uncertainty, or that field', () => {
    expect(told(12, 'lengths.clear')).toEqual({ value: { least: 12, likely: 12, most: 12 } });
    expect(told(0, 'lengths.clear')).toEqual({ value: { least: 0, likely: 0, most: 0 } });
    expect(told(plusMinus(12, 0.5), 'lengths.clear')).toEqual({ value: { least: 11.5, likely: 12, most: 12.5 } });
    expect(told(undefined, 'lengths.clear')).toEqual(UNKNOWN);
  });

  it('has a figure or fields that are missing, never both', () => {
    expect(figureOf(told(12, ''))).toEqual({ least: 12, likely: 12, most: 12 });
    expect(missingOf(told(12, ''))).toEqual([]);
    expect(figureOf(UNKNOWN)).toBeUndefined();
    expect(missingOf(UNKNOWN)).toEqual(['lengths.clear']);
  });

  it('adds up in the worst case', () => {
    expect(total(told(plusMinus(10, 0.1), ''), told(plusMinus(5, 0.2), ''))).toEqual({
      value: { least: 9.9 + 4.8, likely: 15, most: 10.1 + 5.2 },
    });
    // 10 ± 0.1 less 3 ± 0.2 and 2 ± 0.1
    const { least, likely, most } = figureOf(
      left(told(plusMinus(10, 0.1), ''), told(plusMinus(3, 0.2), ''), told(plusMinus(2, 0.1), '')),
    )!;
    expect([least, likely, most].map((one) => Math.round(one * 1e6) / 1e6)).toEqual([4.6, 5, 5.4]);
  });

  it('of which a term is missing wants every such field, once', () => {
    const other: Known = { missing: ['lengths.far_face', 'lengths.clear'] };
    expect(total(told(1, ''), UNKNOWN, other)).toEqual({ missing: ['lengths.clear', 'lengths.far_face'] });
    expect(left(UNKNOWN, told(1, ''))).toEqual(UNKNOWN);
    expect(left(told(1, ''), UNKNOWN)).toEqual(UNKNOWN);
  });
});
