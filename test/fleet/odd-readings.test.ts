import { describe, expect, it } from 'vitest';
import { likelySlip, oddReadings } from '../../src/fleet/odd-readings.js';
import type { PlannedPart } from '../../src/fleet/plan.js';

const part = (role: string, ...readings: readonly (readonly [field: string, value: number, fellows?: string])[]) =>
  ({
    role,
    readings: readings.map(([field, value, fellows = field]) => ({ field, value, fellows, place: `rows:${role}` })),
  }) as unknown as PlannedPart;
/** What is told of parts with one reading each, all fellows. */
const oddOf = (...values: readonly number[]) =>
  [...oddReadings(values.map((value, i) => part(`r${i}`, ['d', value]))).values()].flat();
const odd = (...values: readonly number[]) => oddOf(...values).map(({ value }) => value);

describe('readings that stand alone, by hand', () => {
  it('lie further from the middle of the others than 0.1 mm', () => {
    expect(odd(2, 2, 2, 2.1)).toEqual([]);
    expect(odd(2, 2, 2, 2.11)).toEqual([2.11]);
    expect(odd(2, 2, 2, 1.9)).toEqual([]);
    expect(odd(2, 2, 2, 1.89)).toEqual([1.89]);
  });

  it('and than 2 % of it', () => {
    expect(odd(20, 20, 20, 20.4)).toEqual([]);
    expect(odd(20, 20, 20, 20.41)).toEqual([20.41]);
    expect(odd(-20, -20, -20, -20.4)).toEqual([]);
  });

  it('and than five times their spread, 1.4826 times the middle of what they are off', () => {
    // 10.2 in the middle, off by 0.2, 0.1, 0.1, 0.2: 5 · 1.4826 · 0.15 = 1.112
    expect(odd(10.4, 10, 10.1, 10.3, 11.31)).toEqual([]);
    expect(odd(10.3, 10, 10.4, 10.1, 11.32)).toEqual([11.32]);
    // of five the middle one, 10.2: off by 0.2, 0.1, 0, 0.1, 0.2: 5 · 1.4826 · 0.1 = 0.741
    expect(odd(10, 10.1, 10.2, 10.3, 10.4, 10.94)).toEqual([]);
    expect(odd(10, 10.1, 10.2, 10.3, 10.4, 10.95)).toEqual([10.95]);
  });

  it('say what their fellows read, and what was meant where a slip explains it', () => {
    expect(oddOf(7.9, 7.9, 7.9, 8.5)).toEqual([
      {
        role: 'r3',
        field: 'd',
        value: 8.5,
        fellows: 7.9,
        meant: 8,
        message: 'rows:r3 d: 8.5 stands alone, its 3 fellows read about 7.9; if one digit is wrong, it was 8',
      },
    ]);
    const [strange] = oddOf(7.93, 7.93, 7.93, 6.5);
    expect(strange!.meant).toBeNull();
    expect(strange!.message).toMatch(/about 7\.93; measure it again$/);
  });

  it('of two alone are told at both where a slip explains them, unless it is one that explains anything', () => {
    expect(oddOf(7.29, 7.92).map(({ meant, message }) => [meant, /its (.*) about/.exec(message)?.[1]])).toEqual([
      [7.92, 'fellow reads'],
      [7.29, 'fellow reads'],
    ]);
    expect(odd(7.9, 8.5)).toEqual([]);
    expect(odd(6.5, 7.93)).toEqual([]);
    // of three it is told
    expect(odd(7.9, 7.9, 8.5)).toEqual([8.5]);
  });

  it('are held against their fellows alone, by part', () => {
    const a = part('a', ['d', 7.9], ['l', 20]);
    const b = part('b', ['d', 7.9], ['l', 20]);
    const c = part('c', ['d', 9.9], ['l', 25]);
    const other = part('o', ['d', 12, 'of another template']);
    const none = { role: 'n' } as PlannedPart;
    const found = oddReadings([a, b, none, c, none, other, none]);
    expect([...found.keys()]).toEqual([c]);
    expect(found.get(c)!.map(({ field }) => field)).toEqual(['d', 'l']);
  });

  it('are found among many', () => {
    const many = Array.from({ length: 60 }, (_, i) => 7.9 + 0.001 * i);
    expect(odd(...many)).toEqual([]);
    expect(odd(...many, 9.5)).toEqual([9.5]);
  });
});

describe('likelySlip', () => {
  it.each([
    [7.29, 7.93, 'if two digits changed places', 7.92],
    [79.2, 7.93, 'if the decimal sign slipped', 7.92],
    [792, 7.93, 'if the decimal sign slipped', 7.92],
    [7920, 7.93, 'if the decimal sign slipped', 7.92],
    [0.00792, 7.93, 'if the decimal sign slipped', 7.92],
    [0.3125, 7.93, 'if it was read in inches', 7.9375],
    [3.96, 7.93, 'if it is a radius', 7.92],
    [1.92, 7.93, 'if one digit is wrong', 7.92],
  ])('%f for %f: %s, %f', (value, wanted, what, meant) => {
    expect(likelySlip(value, wanted, 0.16)).toEqual({ what, meant });
  });

  it('finds none where none explains it', () => {
    expect(likelySlip(6.5, 7.93, 0.16)).toBeUndefined();
  });
});
