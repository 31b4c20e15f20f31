import { expect, it } from 'vitest';
import { listed, plainValue } from '../../src/sheet/plain-value.js';

it.each([
  ['7.92', 7.92],
  ['.5', 0.5],
  [' 8 ', 8],
  ['-1e-2', -0.01],
  ['5/16 in', '5/16 in'],
  ['1/4', '1/4'],
  ['0x10', '0x10'],
  ['Infinity', 'Infinity'],
  ['', ''],
])('plain value of %j is %j', (text, value) => {
  expect(plainValue(text)).toBe(value);
});

it('a list is set apart by commas', () => {
  expect(listed('1,0.5 in,')).toEqual([1, '0.5 in', '']);
});
