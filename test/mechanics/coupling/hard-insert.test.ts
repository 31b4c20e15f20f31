import { describe, expect, it } from 'vitest';
import { elastomerModulus } from '../../../src/mechanics/coupling/elastomer.js';
import { carryingJaws, insertGive } from '../../../src/mechanics/coupling/hard-insert.js';

const of = (hardness: number, scale: 'A' | 'D') => elastomerModulus({ hardness, scale });

describe('a hard insert', () => {
  it.each([80, 85, 92, 95, 98])('is soft up to 98 Shore A: %d', (hardness) => {
    expect(insertGive({ modulus: of(hardness, 'A') })).toBe(1);
    expect(carryingJaws({ jaws: 3, modulus: of(hardness, 'A') })).toBe(3);
  });

  // log10 E = 0.0235·(D + 50) − 0.6403, and 52 D of 98 A: 10^(−0.0235·(D − 52))
  it.each([
    [60, 0.6486],
    [64, 0.5224],
    [80, 0.2198],
  ])('takes less misalignment the harder it is: %d Shore D %d of it', (hardness, give) => {
    const modulus = of(hardness, 'D');
    expect(insertGive({ modulus })).toBeCloseTo(give, 3);
    expect(carryingJaws({ jaws: 3, modulus })).toBeCloseTo(2 + give, 3);
    expect(carryingJaws({ jaws: 6, modulus })).toBeCloseTo(2 + 4 * give, 3);
    expect(carryingJaws({ jaws: 2, modulus })).toBe(2);
  });

  it('has a stiffness, between two jaws and twelve', () => {
    expect(() => insertGive({ modulus: 0 })).toThrow('modulus');
    expect(() => carryingJaws({ jaws: 1, modulus: 40 })).toThrow('jaws');
    expect(() => carryingJaws({ jaws: 13, modulus: 40 })).toThrow('jaws');
    expect(carryingJaws({ jaws: 12, modulus: 40 })).toBe(12);
  });
});
