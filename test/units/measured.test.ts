import { describe, expect, it } from 'vitest';
import {
  difference,
  exactly,
  halfWidth,
  plusMinus,
  scaled,
  shifted,
  smallest,
  sum,
  widened,
} from '../../src/units/measured.js';

// hand derivations: worst cases add
describe('measured values', () => {
  const a = plusMinus(8, 0.5);
  const b = { least: 1, likely: 2, most: 4 };

  it('add, subtract and scale at their worst', () => {
    expect(sum(a, b)).toEqual({ least: 8.5, likely: 10, most: 12.5 });
    expect(difference(a, b)).toEqual({ least: 3.5, likely: 6, most: 7.5 });
    expect(scaled(b, -2)).toEqual({ least: -8, likely: -4, most: -2 });
    expect(shifted(a, -8)).toEqual({ least: -0.5, likely: 0, most: 0.5 });
    expect(widened(exactly(1), 0.25)).toEqual({ least: 0.75, likely: 1, most: 1.25 });
    expect(smallest(a, b)).toEqual({ least: 1, likely: 2, most: 4 });
    expect(halfWidth(b)).toBe(2);
    expect(sum()).toEqual(exactly(0));
  });
});
