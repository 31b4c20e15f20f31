import { describe, expect, it } from 'vitest';
import { columnLoad } from '../../src/mechanics/column.js';
import { InputError } from '../../src/units/faults.js';

describe('worked columns (formulas confirmed, figures derived from them)', () => {
  it('long: Euler, root 15.5, span 800, both supported: 9044.5 N', () => {
    expect(columnLoad({ rootDiameter: 15.5, span: 800, ends: 'supported' })).toBeCloseTo(9044.5, 0);
  });
  it('long: Euler, root 6.2, span 300, free at one end: 411.6 N', () => {
    expect(columnLoad({ rootDiameter: 6.2, span: 300, ends: 'fixed-free' })).toBeCloseTo(411.6, 1);
  });
  it('short: Johnson, root 15.5, span 300, both supported, yield 300: 44152 N', () => {
    expect(columnLoad({ rootDiameter: 15.5, span: 300, ends: 'supported' })).toBeCloseTo(44152, -1);
  });
});

// Euler by hand, E 200 GPa, root 5.5: I = π·5.5⁴/64 = 44.918; π²·2e5·44.918/300² = 985.2 N; × 0.25, 4 and 2
it.each([
  ['supported', 985.2],
  ['fixed-free', 246.3],
  ['fixed-fixed', 3940.7],
  ['fixed-supported', 1970.4],
] as const)('Euler, root 5.5, span 300, %s: %d N', (ends, load) => {
  const soft = { rootDiameter: 5.5, span: 300, ends, modulus: 200_000, yield: 1e5 };
  expect(Math.abs(columnLoad({ ...soft, factors: 'theory' }) - load)).toBeLessThan(0.1);
  expect(columnLoad(soft)).toBeLessThanOrEqual(load + 0.1);
});

describe('between the two formulas', () => {
  it('changes at L/k 116.7 for steel of yield 300, where both give half the yield load', () => {
    const rootDiameter = 16; // k = 4, A = 64π
    const limit = 4 * Math.sqrt((2 * Math.PI ** 2 * 207000) / 300);
    expect(limit / 4).toBeCloseTo(116.7, 1);
    for (const span of [limit * 0.999999, limit, limit * 1.000001]) {
      expect(columnLoad({ rootDiameter, span, ends: 'supported' })).toBeCloseTo(150 * 64 * Math.PI, 0);
    }
  });
  it('tends to the yield load as the column gets short', () => {
    expect(columnLoad({ rootDiameter: 16, span: 0.01, ends: 'supported' })).toBeCloseTo(300 * 64 * Math.PI, 1);
  });
});

it('takes the end factors of theory when asked: 0.25, 1, 2, 4 (confirmed)', () => {
  const at = (
    ends: 'fixed-free' | 'supported' | 'fixed-supported' | 'fixed-fixed',
    factors: 'theory' | 'recommended',
  ) =>
    columnLoad({ rootDiameter: 6, span: 2000, ends, factors }) /
    columnLoad({ rootDiameter: 6, span: 2000, ends: 'supported' });
  expect(at('fixed-free', 'theory')).toBeCloseTo(0.25, 10);
  expect(at('fixed-supported', 'theory')).toBeCloseTo(2, 10);
  expect(at('fixed-fixed', 'theory')).toBeCloseTo(4, 10);
  expect(at('fixed-supported', 'recommended')).toBeCloseTo(1.2, 10);
  expect(at('fixed-fixed', 'recommended')).toBeCloseTo(1.2, 10);
});

it('refuses values outside their ranges', () => {
  const good = { rootDiameter: 6, span: 300, ends: 'supported' } as const;
  expect(() => columnLoad({ ...good, span: 0 })).toThrow(/^span: /);
  expect(() => columnLoad({ ...good, modulus: -1 })).toThrow(/^modulus: /);
  expect(() => columnLoad({ ...good, yield: 0 })).toThrow(/^yield: /);
  // @ts-expect-error a script may pass any word
  expect(() => columnLoad({ ...good, ends: 'hinged' })).toThrow(InputError);
  // @ts-expect-error a script may pass any word
  expect(() => columnLoad({ ...good, factors: 'bold' })).toThrow(/^factors: /);
});
