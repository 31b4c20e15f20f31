import { describe, expect, it } from 'vitest';
import { monteCarlo } from '../../../src/fit/stack/monte-carlo.js';
import { normalBelow } from '../../../src/fit/stack/normal.js';
import { chanceAbove } from '../../../src/fit/stack/probability.js';
import { propagate } from '../../../src/fit/stack/propagate.js';
import { seededNormal, seededUniform } from '../../../src/fit/stack/seeded.js';
import { spreadLessDrift, spreadOf } from '../../../src/fit/stack/spread.js';
import type { StackInput } from '../../../src/fit/stack/stack.js';
import { exactly, plusMinus } from '../../../src/units/measured.js';

const inputs: StackInput<'a' | 'b' | 'c'>[] = [
  { name: 'a', value: plusMinus(10, 0.3) },
  { name: 'b', value: plusMinus(4, 0.1) },
  { name: 'c', value: { least: 0, likely: 0, most: 0.2 } },
];
// a gap: hole less shaft, less an effect that can only close it
const gap = ({ a, b, c }: Record<'a' | 'b' | 'c', number>) => ({ gap: a - 2 * b - c });

describe('first order', () => {
  const { gap: result } = propagate(inputs, gap);

  it('adds bounds in the worst case: 2 − 0.3 − 2·0.1 − 0.2 and 2 + 0.3 + 2·0.1', () => {
    expect(result.worst.least).toBeCloseTo(1.3, 12);
    expect(result.worst.likely).toBeCloseTo(2, 12);
    expect(result.worst.most).toBeCloseTo(2.5, 12);
  });

  it('adds variances: σ² = 0.15² + 0.1² + 0.05², mean moved by the one-sided effect to 1.9', () => {
    expect(result.sigma).toBeCloseTo(Math.sqrt(0.0225 + 0.01 + 0.0025), 12);
    expect(result.mean).toBeCloseTo(1.9, 12);
  });

  it('ranks what the spread comes from', () => {
    expect(result.contributions.map(({ name }) => name)).toEqual(['a', 'b', 'c']);
    expect(result.contributions[0]!.share).toBeCloseTo(0.0225 / 0.035, 12);
    expect(result.contributions[2]).toMatchObject({ down: expect.closeTo(-0.2, 12), up: 0 });
  });

  it('leaves out what has no spread', () => {
    const still = inputs.map((input) => (input.name === 'b' ? { ...input, value: exactly(4) } : input));
    expect(propagate(still, gap).gap.contributions.map(({ name }) => name)).toEqual(['a', 'c']);
  });
});

describe('normal distribution', () => {
  it.each([
    // table of the standard normal distribution, four places
    [0, 0.5],
    [0.5, 0.6915],
    [1, 0.8413],
    [1.645, 0.95],
    [1.96, 0.975],
    [2.5, 0.9938],
    [3, 0.9987],
  ])('Φ(%s) = %s', (z, p) => {
    expect(normalBelow(z)).toBeCloseTo(p, 4);
    expect(normalBelow(-z)).toBeCloseTo(1 - p, 4);
  });

  it('goes to 0 and 1', () => {
    expect(normalBelow(Infinity)).toBe(1);
    expect(normalBelow(-40)).toBe(0);
  });
});

const one = (mean: number, sigma: number) => spreadOf({ mean, sigma, contributions: [] });

describe('chances', () => {
  it('bound the chance of several margins: no better than the worst, no worse than all fails apart', () => {
    // Φ(1) = 0.8413, Φ(2) = 0.9772
    const chance = chanceAbove([one(1, 1), one(2, 1)]);
    expect(chance.most).toBeCloseTo(0.8413, 4);
    expect(chance.least).toBeCloseTo(0.8413 + 0.9772 - 1, 3);
  });

  it('are certain without spread', () => {
    expect(chanceAbove([one(0.1, 0)]).least).toBe(1);
    expect(chanceAbove([one(-0.1, 0)])).toEqual({ least: 0, most: 0 });
  });
});

describe('drawn numbers', () => {
  it('are the same for the same seed, and others for another', () => {
    const [one, same, other] = [seededUniform(7), seededUniform(7), seededUniform(8)];
    const rows = Array.from({ length: 50 }, () => [one(), same(), other()]);
    expect(rows.every(([a, b]) => a === b)).toBe(true);
    expect(rows.some(([a, , c]) => a === c)).toBe(false);
  });

  it('have the moments of their distributions within three standard errors', () => {
    const n = 100_000;
    const uniform = seededUniform(1);
    const flat = Array.from({ length: n }, () => uniform());
    expect(Math.min(...flat.slice(0, 50_000))).toBeGreaterThanOrEqual(0);
    expect(Math.abs(flat.reduce((a, b) => a + b, 0) / n - 0.5)).toBeLessThan(3 * Math.sqrt(1 / 12 / n));
    const normal = seededNormal(1);
    const bell = Array.from({ length: n }, () => normal());
    const moment = (k: number) => bell.reduce((sum, x) => sum + x ** k, 0) / n;
    expect(Math.abs(moment(1))).toBeLessThan(3 / Math.sqrt(n));
    expect(Math.abs(moment(2) - 1)).toBeLessThan(3 * Math.sqrt(2 / n));
    expect(Math.abs(moment(4) - 3)).toBeLessThan(3 * Math.sqrt(96 / n));
    expect(bell.filter((x) => x < 1.96).length / n).toBeCloseTo(0.975, 2);
  });
});

it('drawing a linear chain agrees with first order within three standard errors', () => {
  const draws = 40_000;
  const drawn = monteCarlo(inputs, gap, { draws, seed: 3 });
  const { gap: first } = propagate(inputs, gap);
  expect(Math.abs(drawn.mean.gap - first.mean)).toBeLessThan((3 * first.sigma) / Math.sqrt(draws));
  expect(Math.abs(drawn.sigma.gap / first.sigma - 1)).toBeLessThan(3 / Math.sqrt(2 * draws));
  expect(drawn.chanceAbove(['gap'])).toBe(1);
});

describe('spreads', () => {
  const part = (name: string, sensitivity: number, sigma: number, level: boolean) => ({
    name,
    sensitivity,
    sigma,
    level,
    down: 0,
    up: 0,
    share: 0,
  });

  it('a level input alone: 2.5 % of a width of 2 inside each end', () => {
    const level = { mean: 5, sigma: 1 / Math.sqrt(3), contributions: [part('a', 1, 1 / Math.sqrt(3), true)] };
    expect(spreadOf(level).quantile(0.025)).toBeCloseTo(4.05, 4);
    expect(spreadOf(level).below(5.5)).toBeCloseTo(0.75, 6);
  });

  it('play less a drift without play’s spread: 1 − |N(0, 1)| is below 1 − 1.96 in one of twenty', () => {
    const play = { mean: 1, sigma: 0, contributions: [] };
    const drift = { mean: 0, sigma: 1, contributions: [part('z', 1, 1, false)] };
    expect(spreadLessDrift(play, drift).below(1 - 1.96)).toBeCloseTo(0.05, 1);
    const smooth = { mean: 1, sigma: 0.5, contributions: [part('y', 1, 0.5, false)] };
    // drawn: 1 + 0.5·y − |z|
    const normal = seededNormal(5);
    const draws = Array.from({ length: 40_000 }, () => 1 + 0.5 * normal() - Math.abs(normal()));
    for (const x of [-1, 0, 0.5, 1]) {
      const share = draws.filter((value) => value < x).length / draws.length;
      expect(spreadLessDrift(smooth, drift).below(x)).toBeCloseTo(share, 2);
    }
  });

  it('counts an input that moves both: growth that widens the groove and lengthens the pitch', () => {
    const play = { mean: 1, sigma: 0.5, contributions: [part('shrink', -1, 0.5, false)] };
    const drift = { mean: 2, sigma: 0.5, contributions: [part('shrink', -1, 0.5, false)] };
    // 1 − s − (2 − s) = −1 whatever s
    expect(spreadLessDrift(play, drift).quantile(0.4)).toBeCloseTo(-1, 3);
  });
});
