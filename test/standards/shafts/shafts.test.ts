import { describe, expect, it } from 'vitest';
import { parallelKey } from '../../../src/standards/shafts/parallel-key.js';

describe('shafts and keys', () => {
  // DIN 6885-1, CONFIRMED; the limits of a range belong to the range below
  it('knows parallel keys', () => {
    expect(parallelKey(8)).toEqual({ width: 2, height: 2, shaftDepth: 1.2, hubDepth: 1 });
    expect(parallelKey(8.01).width).toBe(3);
    expect(parallelKey(30)).toEqual({ width: 8, height: 7, shaftDepth: 4, hubDepth: 3.3 });
    expect(() => parallelKey(6)).toThrow(/above 6/);
    expect(() => parallelKey(Number.NaN)).toThrow(/above 6/);
  });
});
