import type { Spread } from './spread.js';

/** Bounds of the chance that several margins hold at once. */
export interface Chance {
  /** if no two of them ever failed together: what is reported, as it is never too hopeful */
  readonly least: number;
  /** if they all failed together */
  readonly most: number;
}

/**
 * Chance that all margins are above 0.
 *
 *     1 − Σ (1 − pᵢ)  ≤  P  ≤  min pᵢ          pᵢ = 1 − Fᵢ(0)
 *
 * @param margins distributions of what must be above 0
 * @returns bounds of the chance, 0 to 1
 * @source probability of a union of events
 * @example chanceAbove([spreadOf({ mean: 1.96, sigma: 1, contributions: [] })]).least // 0.975
 */
export function chanceAbove(margins: readonly Pick<Spread, 'below'>[]): Chance {
  const single = margins.map(({ below }) => 1 - below(0));
  const fails = single.reduce((sum, p) => sum + 1 - p, 0);
  return { least: Math.max(0, 1 - fails), most: Math.min(1, ...single) };
}
