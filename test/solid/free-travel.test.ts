import { describe, expect, it } from 'vitest';
import { freeTravel } from '../../src/solid/free-travel.js';

function search(end: number, guess: number, most = 1) {
  let calls = 0;
  const isFree = (x: number) => {
    calls += 1;
    return x < end;
  };
  return { travel: freeTravel(isFree, { guess, most, within: 0.002 }), calls };
}

describe('free travel', () => {
  it.each([
    [0.3, 0.3],
    [0.3, 0.1],
    [0.3, 0.9],
    [0.0531, 0.06],
    [0.999, 0],
  ])('finds the end at %s from a guess of %s', (end, guess) => {
    expect(Math.abs(search(end, guess).travel - end)).toBeLessThanOrEqual(0.0021);
  });

  it('takes two looks where the guess is right', () => {
    expect(search(0.3, 0.3).calls).toBe(2);
  });

  it('is 0 where nothing is free, and the most where all is', () => {
    expect(search(-1, 0.2).travel).toBe(0);
    expect(search(5, 0.2).travel).toBe(1);
  });

  it('keeps a guess outside the range within it', () => {
    expect(search(0.3, 7).travel).toBeCloseTo(0.3, 2);
    expect(search(0.3, -7).travel).toBeCloseTo(0.3, 2);
  });
});
