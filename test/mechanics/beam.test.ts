import { describe, expect, it } from 'vitest';
import { sideLoad } from '../../src/mechanics/beam.js';
import type { ScrewEnds } from '../../src/mechanics/ends.js';

// E·I = 1 N·mm² by choice of the modulus, span 100, offset 1: the force is the stiffness itself.
const rootDiameter = 4;
const modulus = 64 / (Math.PI * rootDiameter ** 4);
const stiffness = (ends: ScrewEnds, at?: number) => sideLoad({ rootDiameter, span: 100, ends, offset: 1, at, modulus });

describe('handbook cases (from memory; each follows from the beam equation)', () => {
  it.each<[ScrewEnds, number]>([
    ['fixed-free', 3],
    ['supported', 48],
    ['fixed-supported', 768 / 7],
    ['fixed-fixed', 192],
  ])('%s: %s·E·I/L³ at the usual place', (ends, factor) => {
    expect(stiffness(ends) * 100 ** 3).toBeCloseTo(factor, 9);
  });
});

/**
 * Stiffness by virtual work, worked out apart from the formulas: deflection under a unit load is ∫M²dx for the
 * statically determinate beam, with the redundant end moments chosen so that the fixed ends keep their slope.
 */
function byVirtualWork(fixedLeft: boolean, fixedRight: boolean, at: number): number {
  const n = 20000;
  const load = (x: number) => (x < at ? x * (1 - at) : at * (1 - x)); // span 1, simply supported
  const left = (x: number) => 1 - x;
  const right = (x: number) => x;
  const integral = (f: (x: number) => number) => {
    let total = 0;
    for (let i = 0; i < n; i += 1) total += f((i + 0.5) / n) / n;
    return total;
  };
  const p = integral((x) => load(x) * left(x));
  const q = integral((x) => load(x) * right(x));
  let [a, b] = [0, 0];
  if (fixedLeft && fixedRight) [a, b] = [-(p / 3 - q / 6) / (1 / 9 - 1 / 36), -(q / 3 - p / 6) / (1 / 9 - 1 / 36)];
  else if (fixedLeft) a = -3 * p;
  return 1 / integral((x) => load(x) * (load(x) + a * left(x) + b * right(x)));
}

it('agrees with virtual work anywhere along the span', () => {
  for (const at of [0.2, 0.35, 0.5, 0.8]) {
    expect(stiffness('supported', at) * 1e6).toBeCloseTo(byVirtualWork(false, false, at), 2);
    expect(stiffness('fixed-supported', at) * 1e6).toBeCloseTo(byVirtualWork(true, false, at), 2);
    expect(stiffness('fixed-fixed', at) * 1e6).toBeCloseTo(byVirtualWork(true, true, at), 1);
    expect(stiffness('fixed-free', at) * 1e6).toBeCloseTo(3 / at ** 3, 6);
  }
});

it('refuses values outside their ranges', () => {
  const good = { rootDiameter: 5, span: 300, ends: 'supported', offset: 0.2 } as const;
  expect(() => sideLoad({ ...good, at: 0 })).toThrow(/^at: /);
  expect(() => sideLoad({ ...good, at: 1 })).toThrow(/^at: /);
  expect(() => sideLoad({ ...good, offset: -1 })).toThrow(/^offset: /);
  expect(() => sideLoad({ ...good, span: 0 })).toThrow(/^span: /);
  // @ts-expect-error a script may pass any word
  expect(() => sideLoad({ ...good, ends: 'x' })).toThrow(/^ends: /);
});
