import { describe, expect, it } from 'vitest';
import { plain, rounded } from '../../src/units/format.js';

describe('plain', () => {
  it.each([
    [2.5001, 3, '2.5'],
    [100, 0, '100'],
    [100, 3, '100'],
    [-0.0001, 3, '0'],
    [0.0005, 3, '0.001'],
    [1 / 3, 2, '0.33'],
    [Number.POSITIVE_INFINITY, 3, 'unlimited'],
    [Number.NaN, 3, 'NaN'],
  ])('writes %f to %d places', (value, places, text) => {
    expect(plain(value, places)).toBe(text);
  });
});

describe('rounded', () => {
  it.each([
    [0.1 + 0.2, 6, 0.3],
    [-1e-9, 6, 0],
    [1e305, 6, 1e305],
    [2.00049, 3, 2],
  ])('rounds %f to %d places', (value, places, expected) => {
    expect(rounded(value, places)).toBe(expected);
  });
});
