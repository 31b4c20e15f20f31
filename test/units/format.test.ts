import { describe, expect, it } from 'vitest';
import { alike, howMany, plain, rounded, upwards, worked } from '../../src/units/format.js';

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

describe('howMany', () => {
  it.each([
    [0, 'pitch', '0 pitches'],
    [1, 'pitch', '1 pitch'],
    ['1', 'pitch', '1 pitch'],
    ['1.5', 'pitch', '1.5 pitches'],
    [2, 'pitch', '2 pitches'],
  ])('counts %s %s', (count, one, text) => {
    expect(howMany(count, one, 'pitches')).toBe(text);
  });

  it('adds an s where nothing else is said', () => {
    expect(howMany(2, 'part')).toBe('2 parts');
  });
});

describe('alike', () => {
  it.each([
    [
      [0.04, 0.1, 1],
      ['0.04', '0.10', '1.00'],
    ],
    [
      [2, 3],
      ['2', '3'],
    ],
    [
      [0.12345, 0.5],
      ['0.123', '0.500'],
    ],
    [[], []],
  ])('writes %j with the same decimals', (values, texts) => {
    expect(alike(values)).toEqual(texts);
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

describe('worked', () => {
  it.each([
    [73.742, 'min', '73.7'],
    [446.875, 'MPa', '446.9'],
    [15.302, 'MPa', '15.3'],
    [2.774, 'MPa', '2.77'],
    [0.242, 'MPa', '0.24'],
    [12.345, 'mm', '12.35'],
    [0.4849, 'mm', '0.48'],
    [0.0613, 'mm', '0.061'],
    [-0.0004219, 'mm', '-0.00042'],
    [1151, 'N', '1151'],
    [0, 'mm', '0'],
  ])('tells %f %s as %s', (value, unit, text) => {
    expect(worked(value, unit)).toBe(text);
  });

  it('has more decimals where they are asked for', () => {
    expect(worked(0.1496, 'mm', 1)).toBe('0.15');
    expect(worked(0.1496, 'mm', 2)).toBe('0.1496');
  });
});

describe('upwards', () => {
  it.each([
    [0.351, '0.36'],
    [0.35, '0.35'],
    [0.1 + 0.2, '0.3'],
    [0.0001, '0.01'],
  ])('%f is enough with %s', (value, text) => {
    expect(upwards(value)).toBe(text);
  });
});
