import { levelNormalBelow, levelNormalDensity, TINY } from './level-normal.js';
import { normalDensity } from './normal.js';
import type { Contribution, StackResult } from './stack.js';
import { whereIt } from './where-it.js';

/** A result as a distribution. */
export interface Spread {
  /** share of the parts that come out below x, 0 to 1 */
  readonly below: (x: number) => number;
  /** what that share of the parts stays below; `share` 0 to 1, both left out */
  readonly quantile: (share: number) => number;
}

/** What 19 of 20 parts keep: one in forty lies below, one in forty above. */
export const USUAL = [0.025, 0.975] as const;

type Result = Pick<StackResult<string>, 'mean' | 'sigma' | 'contributions'>;

/**
 * The distribution of a result: its two largest level inputs as they are, all others together as a normal one.
 *
 *     F(x) = (s/2h)·[G((t+h)/s) − G((t−h)/s)]     t = x − mean,  G(z) = z·Φ(z) + φ(z)
 *
 * with h the half-width of the largest level input and s the standard deviation of the rest, summed over the points of
 * the second largest.
 *
 * @param result mean, standard deviation and contributions of a chain
 * @returns the distribution
 * @source derived: sum of a level and a normal variable; the rest by the central limit
 * @validity three level inputs of one size leave half a part in a hundred
 * @example spreadOf({ mean: 0, sigma: 1, contributions: [] }).below(1.96) // 0.975
 */
export function spreadOf(result: Result): Spread {
  const { levels, rest } = splitOf(result);
  const [first = NONE, second = NONE] = levels;
  const cells = nodesOf(second, rest).map(([at, weight]) => ({ weight, mean: result.mean + second.half * at }));
  return summed(cells, first.half, rest, { middle: result.mean, reach: first.reach + second.reach + 7 * rest });
}

/**
 * The distribution of play less drift, whichever way the drift goes: X = P − |D|. Inputs that move both are counted as
 * such. The largest level input of play is taken as it is where it moves no drift.
 *
 * @param play P
 * @param drift D
 * @returns the distribution
 * @source derived: P is normal for a given drift and given values of its level inputs; all are summed over
 * @example spreadLessDrift({ mean: 1, sigma: 0, contributions: [] }, { mean: -0.4, sigma: 0, contributions: [] }).quantile(0.5) // 0.6
 */
export function spreadLessDrift(play: Result, drift: Result): Spread {
  const { levels, rest } = splitOf(play);
  const steers = levels.map(({ name }) => signedHalf(drift.contributions.find((one) => one.name === name)));
  const ofLevels = steers.reduce((sum, half) => sum + half ** 2 / 3, 0);
  const driftRest = Math.sqrt(Math.max(0, drift.sigma ** 2 - ofLevels));
  const names = levels.map(({ name }) => name);
  const slope = driftRest > TINY ? covariance(play.contributions, drift.contributions, names) / driftRest : 0;
  const left = Math.sqrt(Math.max(0, rest ** 2 - slope ** 2));
  const [first = NONE, second = NONE] = levels;
  const [steer = 0, secondSteer = 0] = steers;
  const whole = steer === 0 ? first.half : 0;
  const cells = nodesOf(whole === 0 ? first : NONE, left).flatMap(([a, weightA]) =>
    nodesOf(second, left).flatMap(([b, weightB]) => {
      const middle = drift.mean + steer * a + secondSteer * b;
      return normalNodes(-middle / driftRest, left / driftRest).map(([z, share]) => ({
        weight: weightA * weightB * share,
        mean: play.mean + first.half * a + second.half * b + slope * z - Math.abs(middle + driftRest * z),
      }));
    }),
  );
  const ofDrift = Math.abs(drift.mean) + Math.abs(steer) + Math.abs(secondSteer) + 7 * driftRest;
  return summed(cells, whole, left, {
    middle: play.mean,
    reach: first.reach + second.reach + 7 * rest + ofDrift,
  });
}

/** A level input: its half-width with the sign of its slope. */
interface Level {
  readonly name: string;
  readonly half: number;
  readonly reach: number;
}

const NONE: Level = { name: '', half: 0, reach: 0 };

/** A level input that is narrower than this share of the rest is as good as a normal one. */
const MATTERS = 0.4;

/** The points over which a level input is summed; few where the rest blurs them. */
function nodesOf({ half, reach }: Level, rest: number): readonly (readonly [number, number])[] {
  if (half === 0) return [[0, 1]];
  return reach < 2 * rest ? FOUR : EIGHT;
}

/** Points and weights of Gauss and Legendre between −1 and 1, eight or four; the weights sum to 1. */
const EIGHT = mirrored([
  [0.1834346424956498, 0.1813418916891809],
  [0.525532409916329, 0.1568533229389436],
  [0.7966664774136267, 0.1111905172266872],
  [0.9602898564975363, 0.0506142681451881],
]);
const FOUR = mirrored([
  [0.3399810435848563, 0.3260725774312731],
  [0.8611363115940526, 0.1739274225687269],
]);

function mirrored(half: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  return half.flatMap(([at, weight]) => [[-at, weight] as const, [at, weight] as const]);
}

/**
 * Points of a normal variable with their weights, which sum to 1: panels to either side of the kink, narrow where what
 * is left besides is narrow.
 */
function normalNodes(kink: number, left: number): readonly (readonly [number, number])[] {
  if (!Number.isFinite(kink)) return [[0, 1]];
  const at = Math.min(END, Math.max(-END, kink));
  const panels = Math.min(6, Math.max(1, Math.ceil(0.5 / left)));
  const points = [...panelled(-END, at, panels), ...panelled(at, END, panels)];
  const total = points.reduce((sum, [, weight]) => sum + weight, 0);
  return points.map(([z, weight]) => [z, weight / total] as const);
}

/** A normal variable beyond this is left out, in standard deviations. */
const END = 4.5;

function panelled(from: number, to: number, panels: number): (readonly [number, number])[] {
  const half = (to - from) / panels / 2;
  if (half < TINY) return [];
  return Array.from({ length: panels }, (_, i) => from + (2 * i + 1) * half).flatMap((middle) =>
    EIGHT.map(([at, weight]) => {
      const z = middle + half * at;
      return [z, weight * half * normalDensity(z)] as const;
    }),
  );
}

/** Up to two level inputs that matter, and the standard deviation of all else. */
function splitOf({ sigma, contributions }: Result): { readonly levels: readonly Level[]; readonly rest: number } {
  const levels: Level[] = [];
  let rest = sigma;
  for (const one of contributions.filter(({ level }) => level).slice(0, 2)) {
    const half = signedHalf(one);
    const without = Math.sqrt(Math.max(0, rest ** 2 - half ** 2 / 3));
    if (Math.abs(half) < MATTERS * without) break;
    levels.push({ name: one.name, half, reach: Math.abs(half) });
    rest = without;
  }
  return { levels, rest };
}

function signedHalf(part: Contribution<string> | undefined): number {
  if (!part?.level) return 0;
  return Math.sign(part.sensitivity) * part.sigma * Math.sqrt(3);
}

function covariance(
  one: readonly Contribution<string>[],
  other: readonly Contribution<string>[],
  without: readonly string[],
): number {
  return one.reduce((sum, { name, sigma, sensitivity }) => {
    const match = without.includes(name) ? undefined : other.find((candidate) => candidate.name === name);
    return match ? sum + sigma * match.sigma * Math.sign(sensitivity * match.sensitivity) : sum;
  }, 0);
}

/** What is summed over: its share of all, and where what is left lies then. */
interface Cell {
  readonly weight: number;
  readonly mean: number;
}

/** Cells, in each of them a level variable of half-width h plus a normal one of standard deviation s. */
function summed(
  cells: readonly Cell[],
  half: number,
  sigma: number,
  { middle, reach }: { readonly middle: number; readonly reach: number },
): Spread {
  const sum = (of: typeof levelNormalBelow) => (x: number) => {
    let all = 0;
    for (const { weight, mean } of cells) all += weight * of(x - mean, half, sigma);
    return all;
  };
  const below = sum(levelNormalBelow);
  const density = sum(levelNormalDensity);
  return { below, quantile: (share) => whereIt(below, density, share, middle - reach, middle + reach) };
}
