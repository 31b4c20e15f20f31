import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../../src/fit/stack/normal.js';
import { chanceAbove } from '../../../src/fit/stack/probability.js';
import { propagate } from '../../../src/fit/stack/propagate.js';
import { spreadLessDrift, spreadOf } from '../../../src/fit/stack/spread.js';
import type { StackInput } from '../../../src/fit/stack/stack.js';
import { exactly, plusMinus } from '../../../src/units/measured.js';
import { monteCarlo } from '../../support/monte-carlo.js';
import { seededNormal, seededUniform } from '../../support/seeded.js';

const inputs: StackInput<'a' | 'b' | 'c'>[] = [
  { name: 'a', value: plusMinus(10, 0.3) },
  { name: 'b', value: plusMinus(4, 0.1) },
  { name: 'c', value: { least: 0, likely: 0, most: 0.2 } },
];
// a gap: hole less shaft, less an effect that can only close it
const gap = ({ a, b, c }: Record<'a' | 'b' | 'c', number>) => ({ gap: a - 2 * b - c });

// chains are worked out inside each test: what runs while tests are collected belongs to none of them
describe('first order', () => {
  const worked = () => propagate(inputs, gap).gap;

  it('adds bounds in the worst case: 2 − 0.3 − 2·0.1 − 0.2 and 2 + 0.3 + 2·0.1', () => {
    expect(worked().worst.least).toBeCloseTo(1.3, 12);
    expect(worked().worst.likely).toBeCloseTo(2, 12);
    expect(worked().worst.most).toBeCloseTo(2.5, 12);
  });

  it('adds variances: σ² = 0.15² + 0.1² + 0.05², mean moved by the one-sided effect to 1.9', () => {
    expect(worked().sigma).toBeCloseTo(Math.sqrt(0.0225 + 0.01 + 0.0025), 12);
    expect(worked().mean).toBeCloseTo(1.9, 12);
  });

  it('ranks what the spread comes from', () => {
    expect(worked().contributions.map(({ name }) => name)).toEqual(['a', 'b', 'c']);
    expect(worked().contributions[0]!.share).toBeCloseTo(0.0225 / 0.035, 12);
    expect(worked().contributions[2]).toMatchObject({ down: expect.closeTo(-0.2, 12), up: 0 });
  });

  it('leaves out what has no spread', () => {
    const still = inputs.map((input) => (input.name === 'b' ? { ...input, value: exactly(4) } : input));
    expect(propagate(still, gap).gap.contributions.map(({ name }) => name)).toEqual(['a', 'c']);
  });
});

describe('what a chain hangs on', () => {
  const chain: StackInput<'z' | 'big' | 'a' | 'still' | 'idle'>[] = [
    { name: 'z', value: plusMinus(1, 0.1) },
    { name: 'big', value: plusMinus(1, 0.3) },
    { name: 'a', value: plusMinus(1, 0.1) },
    { name: 'still', value: exactly(1) },
    { name: 'idle', value: plusMinus(1, 0.5) },
  ];
  const worked = () => propagate(chain, ({ z, big, a, still }) => ({ y: z + big + a + still })).y;

  it('comes largest first, equals by name, without what does not move it', () => {
    expect(worked().contributions.map(({ name }) => name)).toEqual(['big', 'a', 'z']);
  });

  it('comes in that order however it is told', () => {
    const { y } = propagate([...chain].reverse(), ({ z, big, a }) => ({ y: z + big + a }));
    expect(y.contributions.map(({ name }) => name)).toEqual(['big', 'a', 'z']);
  });

  it('has bounds with exact inputs too: 4 − 0.1 − 0.3 − 0.1', () => {
    expect(worked().worst.least).toBeCloseTo(3.5, 12);
    expect(worked().mean).toBeCloseTo(4, 12);
  });
});

describe('a level input', () => {
  // every value between 1 and 3 alike: σ is the width over √12, 0.57735; twice and downwards by the slope of −2
  const worked = () =>
    propagate(
      [
        { name: 'level', value: { least: 1, likely: 1.5, most: 3 }, level: true },
        { name: 'normal', value: plusMinus(0, 0.1) },
      ],
      ({ level, normal }) => ({ y: normal - 2 * level }),
    ).y;

  it('gives its width over √12, where others give a quarter', () => {
    expect(worked().sigma).toBeCloseTo(Math.hypot((2 * 2) / Math.sqrt(12), 0.05), 12);
    expect(worked().contributions.map(({ name, level }) => [name, level])).toEqual([
      ['level', true],
      ['normal', false],
    ]);
    expect(worked().contributions[0]!.sensitivity).toBeCloseTo(-2, 12);
  });

  it('has its middle as mean, and both ends as bounds: −3 − 3 + 0.1 and −3 + 1 + 0.1', () => {
    expect(worked().mean).toBeCloseTo(-4, 12);
    expect(worked().contributions[0]).toMatchObject({ down: expect.closeTo(-3, 12), up: expect.closeTo(1, 12) });
    expect(worked().worst).toMatchObject({ least: expect.closeTo(-6.1, 12), most: expect.closeTo(-1.9, 12) });
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

  it.each([
    // table of ten places, rounded to seven
    [0.5, 0.6914625],
    [1, 0.8413447],
    [2, 0.9772499],
    [3, 0.9986501],
    [4, 0.9999683],
  ])('Φ(%s) = %s, to 1.5 in ten million', (z, p) => {
    expect(Math.abs(normalBelow(z) - p)).toBeLessThan(2e-7);
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
    expect(chanceAbove([one(-0.1, 0), one(-0.2, 0)])).toEqual({ least: 0, most: 0 });
    // on the line itself: half
    expect(chanceAbove([one(0, 0)])).toEqual({ least: 0.5, most: 0.5 });
    expect(chanceAbove([])).toEqual({ least: 1, most: 1 });
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

describe('draws', () => {
  const drawn = monteCarlo(inputs, ({ a, b }) => ({ up: a, down: -b, none: 0 }), { draws: 2, seed: 1 });

  it('of two have the half of their squared distance as variance', () => {
    const [first, second] = drawn.rows.map(({ up }) => up);
    expect(drawn.sigma.up).toBeCloseTo(Math.abs(first! - second!) / Math.SQRT2, 12);
    expect(drawn.mean.up).toBeCloseTo((first! + second!) / 2, 12);
  });

  it('count where all results are above 0', () => {
    expect(drawn.chanceAbove(['up'])).toBe(1);
    expect(drawn.chanceAbove(['up', 'down'])).toBe(0);
    expect(drawn.chanceAbove(['none'])).toBe(0);
  });
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
    expect(Math.abs(spreadLessDrift(play, drift).below(1 - 1.96) - 0.05)).toBeLessThan(0.01);
    // table of Φ: half of them lie within 0.6745; without any spread of play the points of the sum are seen one by one
    expect(Math.abs(spreadLessDrift(play, drift).below(1 - 0.6745) - 0.5)).toBeLessThan(0.03);
    const driven = { ...drift, mean: 0.7 };
    // |0.7 + z| above 1.96: 1 − Φ(1.26) + Φ(−2.66) = 0.1038 + 0.0039
    expect(Math.abs(spreadLessDrift(play, driven).below(1 - 1.96) - 0.1077)).toBeLessThan(0.01);
    const smooth = { mean: 1, sigma: 0.5, contributions: [part('y', 1, 0.5, false)] };
    // drawn: 1 + 0.5·y − |z|
    const normal = seededNormal(5);
    const draws = Array.from({ length: 40_000 }, () => 1 + 0.5 * normal() - Math.abs(normal()));
    for (const x of [-1, 0, 0.5, 1]) {
      const share = draws.filter((value) => value < x).length / draws.length;
      expect(spreadLessDrift(smooth, drift).below(x)).toBeCloseTo(share, 2);
    }
  });

  it.each([0.1, 1, 10])(
    'play of a little spread less a drift with a mean, as summed over a fine grid, %s times',
    (unit) => {
      const at = (mean: number, sigma: number, name: string) => ({
        mean: mean * unit,
        sigma: sigma * unit,
        contributions: [part(name, 1, sigma * unit, false)],
      });
      const n = 2000;
      const grid = Array.from({ length: n }, (_, i) => (16 * (i + 0.5)) / n - 8);
      const expected = (x: number) =>
        grid.reduce((sum, z) => sum + Math.exp((-z * z) / 2) * normalBelow((x - 1 + Math.abs(0.7 + z)) / 0.1), 0) /
        grid.reduce((sum, z) => sum + Math.exp((-z * z) / 2), 0);
      const spread = spreadLessDrift(at(1, 0.1, 'y'), at(0.7, 1, 'z'));
      for (const x of [-1.5, -0.5, 0, 0.5, 0.9, 1.1])
        expect(Math.abs(spread.below(x * unit) - expected(x))).toBeLessThan(3e-4);
      // the same drift the other way round
      const other = spreadLessDrift(at(1, 0.1, 'y'), at(-0.7, 1, 'z'));
      for (const x of [-1.5, 0, 0.9]) expect(other.below(x * unit)).toBeCloseTo(spread.below(x * unit), 9);
    },
  );

  it('a drift that is certain takes its amount off, whichever way it goes', () => {
    const play = { mean: 1, sigma: 0.5, contributions: [part('y', 1, 0.5, false)] };
    for (const mean of [0.4, -0.4]) {
      const spread = spreadLessDrift(play, { mean, sigma: 0, contributions: [] });
      // Φ(1) and the median
      expect(spread.below(1.1)).toBeCloseTo(0.8413, 4);
      expect(spread.quantile(0.5)).toBeCloseTo(0.6, 5);
    }
  });

  it('counts an input that moves both: growth that widens the groove and lengthens the pitch', () => {
    const play = { mean: 1, sigma: 0.5, contributions: [part('shrink', -1, 0.5, false)] };
    const drift = { mean: 2, sigma: 0.5, contributions: [part('shrink', -1, 0.5, false)] };
    // 1 − s − (2 − s) = −1 whatever s
    expect(spreadLessDrift(play, drift).quantile(0.4)).toBeCloseTo(-1, 3);
  });

  const level = (name: string, sensitivity: number, half: number) => part(name, sensitivity, half / Math.sqrt(3), true);
  const resultOf = (mean: number, contributions: readonly ReturnType<typeof part>[]) => ({
    mean,
    sigma: Math.hypot(...contributions.map(({ sigma }) => sigma)),
    contributions,
  });

  it('two level inputs of ±2 and ±1 make a trapezoid: (t + 3)²/16 below, from −3 to −1', () => {
    const two = spreadOf(resultOf(10, [level('a', 1, 2), level('b', -1, 1)]));
    expect(two.below(9)).toBeCloseTo(0.25, 6);
    expect(two.below(11)).toBeCloseTo(0.75, 6);
    expect(two.below(8.5)).toBeCloseTo(0.1406, 2);
    // (t + 3)² = 16·0.002
    expect(two.quantile(0.002)).toBeCloseTo(7.18, 1);
  });

  it('blurred by a normal one of 0.1 the trapezoid’s foot rises by its variance: ((t + 3)² + 0.01)/16', () => {
    const { below } = spreadOf(resultOf(0, [level('a', 1, 2), level('b', 1, 1), part('n', 1, 0.1, false)]));
    for (let t = -2.7; t <= -1.3; t += 0.05) expect(Math.abs(below(t) - ((t + 3) ** 2 + 0.01) / 16)).toBeLessThan(5e-4);
  });

  it('three level inputs of ±1: 1/48 below −2, to half a part in a hundred', () => {
    const three = spreadOf(resultOf(0, [level('a', 1, 1), level('b', 1, 1), level('c', 1, 1)]));
    expect(Math.abs(three.below(-2) - 1 / 48)).toBeLessThan(0.005);
  });

  it('a level input of ±0.8 on a normal one of 0.5: 0.3125·(G(−2) − G(−5.2)) = 0.00265 below −1.8', () => {
    const mixed = spreadOf(resultOf(0, [part('n', 1, 0.5, false), level('a', 1, 0.8)]));
    expect(mixed.below(-1.8)).toBeCloseTo(0.00265, 4);
    // and of ±1: 0.25·(G(4) − G(0)) = 0.25·(4.0000 − 0.3989)
    expect(spreadOf(resultOf(0, [level('a', 1, 1), part('n', 1, 0.5, false)])).below(1)).toBeCloseTo(0.9003, 4);
    // in hundredths
    expect(spreadOf(resultOf(0, [level('a', 1, 0.02), part('n', 1, 0.01, false)])).below(0.02)).toBeCloseTo(0.9003, 4);
  });

  it('a normal one has one in 741 below three standard deviations', () => {
    expect(one(5, 2).quantile(0.00135)).toBeCloseTo(-1, 2);
    // 1.959964 and 3.090232 standard deviations, to a hundredth of a thousandth
    expect(one(0, 1).quantile(0.025)).toBeCloseTo(-1.95996, 4);
    expect(one(0, 1).quantile(0.975)).toBeCloseTo(1.95996, 4);
    expect(one(0, 1).quantile(0.999)).toBeCloseTo(3.0902, 3);
  });

  it('a level input alone has three quarters below the middle of its upper half, however wide it is', () => {
    for (let half = 0.1; half < 3; half += 0.1) {
      const { below } = spreadOf(resultOf(0, [level('a', 1, half)]));
      expect(below(half / 2)).toBeCloseTo(0.75, 6);
      expect([below(-2 * half), below(2 * half)]).toEqual([0, 1]);
    }
  });

  it('a level input of play that moves no drift only spreads the play: half of 1 ± 1 below 1, whatever is taken off', () => {
    const play = resultOf(1, [level('a', 1, 1), part('y', 1, 0.3, false)]);
    const { below, quantile } = spreadLessDrift(play, { mean: 0.2, sigma: 0, contributions: [] });
    expect(below(0.8)).toBeCloseTo(0.5, 6);
    expect(quantile(0.5)).toBeCloseTo(0.8, 5);
    // and evenly, where nothing else does
    const alone = spreadLessDrift(resultOf(1, [level('a', 1, 1)]), { mean: 0.2, sigma: 0, contributions: [] });
    expect(alone.below(0.3)).toBeCloseTo(0.25, 6);
  });

  it.each([
    ['much drift', resultOf(1, [part('y', 1, 0.1, false)]), resultOf(0, [part('z', 1, 1, false)])],
    ['an input that drives the drift', resultOf(1, [level('a', 1, 0.1)]), resultOf(0, [level('a', 1, 3)])],
    [
      'a second one',
      resultOf(1, [level('a', 1, 0.2), level('b', 1, 0.1)]),
      resultOf(0, [level('b', 1, 3), level('a', 1, 0.1)]),
    ],
    [
      'two wide inputs',
      resultOf(1, [level('a', 1, 1), level('b', 1, 0.9), part('y', 1, 0.05, false)]),
      resultOf(0, []),
    ],
    ['a wide play', resultOf(100, [part('y', 1, 5, false)]), resultOf(0, [])],
  ])('what one of a thousand stays below is found with %s', (_, play, drift) => {
    const smooth = {
      ...play,
      sigma: Math.hypot(play.sigma, 0.05),
      contributions: [...play.contributions, part('n', 1, 0.05, false)],
    };
    const { below, quantile } = spreadLessDrift(smooth, drift);
    for (const share of [0.001, 0.025, 0.5, 0.999]) expect(below(quantile(share))).toBeCloseTo(share, 4);
  });

  // summed here over a fine grid: P = 1.5 + a + b + p, D = 0.3 + 0.5·a − 0.4·b + d, with p and d sharing an input
  it('play less drift, both moved by two level inputs and a normal one, is the sum over all of them', () => {
    const play = resultOf(1.5, [
      level('a', 1, 1),
      level('b', 1, 0.8),
      part('p', 1, 0.25, false),
      part('shared', 1, 0.2, false),
    ]);
    const drift = resultOf(0.3, [
      level('a', 0.5, 0.5),
      level('b', -0.5, 0.4),
      part('d', 1, 0.2, false),
      part('shared', -2, 0.15, false),
    ]);
    const [varP, varD, cov] = [0.25 ** 2 + 0.2 ** 2, 0.2 ** 2 + 0.15 ** 2, -0.2 * 0.15];
    const left = Math.sqrt(varP - cov ** 2 / varD);
    const n = 40;
    const grid = Array.from({ length: n }, (_, i) => (2 * i + 1) / n - 1);
    const bell = grid.map((g) => 5 * g).map((z) => ({ z, weight: Math.exp((-z * z) / 2) }));
    const total = bell.reduce((sum, { weight }) => sum + weight, 0);
    const expected = (x: number) => {
      let sum = 0;
      for (const a of grid)
        for (const b of grid)
          for (const { z, weight } of bell) {
            const d = z * Math.sqrt(varD);
            const middle = 1.5 + a + 0.8 * b + (cov / varD) * d - Math.abs(0.3 + 0.5 * a - 0.4 * b + d);
            sum += weight * normalBelow((x - middle) / left);
          }
      return sum / (n * n * total);
    };
    const spread = spreadLessDrift(play, drift);
    for (const x of [-0.5, 0, 0.7, 1.5, 2.2]) expect(Math.abs(spread.below(x) - expected(x))).toBeLessThan(0.002);
    for (const share of [0.0001, 0.025, 0.5, 0.9999])
      expect(Math.abs(spread.below(spread.quantile(share)) - share)).toBeLessThan(1e-5);
  });
});
