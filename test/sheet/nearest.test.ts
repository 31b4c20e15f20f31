import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/sheet/nearest.js';

describe('nearest', () => {
  it.each([
    ['thicknes', 'thickness'],
    ['diamter', 'diameter'],
    ['daimeter', 'diameter'],
    ['Thickness', 'thickness'],
    ['dia', undefined],
    ['x', undefined],
    ['', undefined],
    ['t'.repeat(100), undefined],
  ])('%s', (word, expected) => {
    expect(nearest(word, ['diameter', 'thickness', 'y'])).toBe(expected);
  });

  it('takes the first by name of two as near', () => {
    expect(nearest('pa', ['pb', 'pa6', 'pc'])).toBe('pa6');
  });
});
