import { requirePositive, requireRange } from '../../units/require.js';

/** Share of the smooth cylinder that a knurled insert, or a thread cut in plastic, holds by [-]. */
const PULL_OUT_SHARE = 0.5;

/**
 * Force that pulls a heat-set insert, or a screw out of a thread cut in plastic: shear on the cylinder around it.
 *
 *     F = k·π·D·L·τ
 *
 * @param p.diameter  D  bore of the insert, or nominal diameter of the thread   [mm]   > 0
 * @param p.length    L  length that holds                                       [mm]   > 0
 * @param p.shear     τ  shear strength of the plastic                           [MPa]  > 0
 * @param p.share     k  share of the cylinder that holds                        [-]    0 to 1, default 0.5
 * @returns F, at failure [N]
 * @throws InputError  a value is outside its range
 * @validity a boss of at least twice the bore; a thin one splits first
 * @source common-practice: half of the cylinder in shear
 * @source derived: shear over a cylinder
 * @example pullOutForce({ diameter: 4, length: 6, shear: 20 }) // 753.98
 */
export function pullOutForce(p: {
  readonly diameter: number;
  readonly length: number;
  readonly shear: number;
  readonly share?: number | undefined;
}): number {
  const { share = PULL_OUT_SHARE } = p;
  requirePositive('diameter', p.diameter);
  requirePositive('length', p.length);
  requirePositive('shear', p.shear);
  requireRange('share', share, 0, 1);
  return share * Math.PI * p.diameter * p.length * p.shear;
}
