import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Width of a plate that bends with one screw: the load spreads by 45° on either side, from the head to where the plate
 * is held, and neighbours share what lies between them.
 *
 *     b = min(dk + 2·a, π·D/n)
 *
 * @param p.head    dk   of head, washer or nut; 0 for an edge                        [mm]  0 or above
 * @param p.arm     a    from the screw's axis to the section                         [mm]  0 or above
 * @param p.across  D    diameter of the body, or of the flange, that holds the plate [mm]  > 0; unlimited where left out
 * @param p.count   n    screws around it                                             [-]   > 0, default 1
 * @returns b [mm]
 * @throws InputError  a value is outside its range
 * @validity the plate may be narrower there; then its own width counts
 * @source common-practice: round flanges with few screws
 * @example stripWidth({ head: 8, arm: 5, across: 22, count: 4 }) // 17.2788
 */
export function stripWidth(p: {
  readonly head: number;
  readonly arm: number;
  readonly across?: number | undefined;
  readonly count?: number | undefined;
}): number {
  const { across = Number.MAX_VALUE, count = 1 } = p;
  requireNotNegative('head', p.head);
  requireNotNegative('arm', p.arm);
  requirePositive('across', across);
  requirePositive('count', count);
  return Math.min(p.head + 2 * p.arm, (Math.PI / count) * across);
}
