import { normalBelow } from './normal.js';
import type { StackResult } from './stack.js';

/** Bounds of the chance that several margins hold at once. */
export interface Chance {
  /** if no two of them ever failed together: what is reported, as it is never too hopeful */
  readonly least: number;
  /** if they all failed together */
  readonly most: number;
}

/**
 * Chance that all margins are above 0, each taken as normally distributed.
 *
 *     1 − Σ (1 − pᵢ)  ≤  P  ≤  min pᵢ          pᵢ = Φ(mean/σ)
 *
 * @param margins results of a chain that must be above 0
 * @returns bounds of the chance, 0 to 1
 * @source probability of a union of events
 * @example chanceAbove([{ mean: 1.96, sigma: 1 }]).least // 0.975
 */
export function chanceAbove(margins: readonly Pick<StackResult<string>, 'mean' | 'sigma'>[]): Chance {
  const single = margins.map(({ mean, sigma }) => (sigma > 0 ? normalBelow(mean / sigma) : mean > 0 ? 1 : 0));
  const fails = single.reduce((sum, p) => sum + 1 - p, 0);
  return { least: Math.max(0, 1 - fails), most: Math.min(1, ...single) };
}
