import { requirePositive, requireRange } from '../../units/require.js';

/** Turns of a printed thread that count as carrying: the first ones take more, the more so with a wrong pitch. */
const LOAD_SHARE = 0.5;

/** The turns of a nut that carry. */
export interface Engagement {
  /** Le, engaged length [mm], > 0 */
  readonly engagedLength: number;
  /** P, pitch [mm], > 0; starts do not matter, each adds its share of turns */
  readonly pitch: number;
  /** share of the turns that carry [-], above 0 to 1; default 0.5 */
  readonly share?: number | undefined;
}

/** Turns that carry, share·Le/P [-]; throws an InputError for a value outside its range. @internal */
export function carryingTurns(p: Engagement): number {
  const { share = LOAD_SHARE } = p;
  requirePositive('engagedLength', p.engagedLength);
  requirePositive('pitch', p.pitch);
  requirePositive('share', share);
  requireRange('share', share, 0, 1);
  return (share * p.engagedLength) / p.pitch;
}
