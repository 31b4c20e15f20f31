import { describe, expect, it } from 'vitest';
import { requireNotNegative, requirePositive, requireRange, requireWhole } from '../../src/units/require.js';

describe('require helpers', () => {
  it('let good values pass, limits included', () => {
    requirePositive('x', Number.MIN_VALUE);
    requireNotNegative('x', 0);
    requireRange('x', 1, 1, 2);
    requireRange('x', 2, 1, 2);
    requireWhole('x', 3, 1, 3);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1])('refuse %f', (value) => {
    expect(() => requirePositive('x', value)).toThrow(`x: ${value}; must be above 0`);
    expect(() => requireNotNegative('x', value)).toThrow(/0 or above/);
    expect(() => requireRange('x', value, 0, 2)).toThrow(/0 to 2/);
    expect(() => requireWhole('x', value, 0, 2)).toThrow(/whole number from 0 to 2/);
  });

  it('refuse zero and fractions where they do not belong', () => {
    expect(() => requirePositive('x', 0)).toThrow(/above 0/);
    expect(() => requireWhole('x', 1.5, 0, 2)).toThrow(/whole/);
  });
});
