import { requireNotNegative, requirePositive } from '../../units/require.js';
import { rootNotch } from '../strength/notch.js';

/**
 * Stress where a ledge leaves its wall, for one that something presses on all along: the shoulder of a pocket under a ring, the
 * floor of a pocket under a head. It bends and shears, and the pocket's corner is sharp.
 *
 *     σ = K·√(σb² + 3·τ²)        σb = 6·F·a / (u·t²)        τ = F / (u·t)        K = 2
 *
 * @param p.force      F  on all of it                                    [N]   0 or above
 * @param p.arm        a  from the middle of what presses to the wall     [mm]  0 or above
 * @param p.root       u  length of the wall's foot, π·D of a round one   [mm]  > 0
 * @param p.thickness  t  of the ledge                                    [mm]  > 0
 * @returns σ, to be borne as a tension along the layers where the ledge lies in them [MPa]
 * @throws InputError  a value is outside its range
 * @validity a ring bends less than the straight ledge: it holds itself all round
 * @source derived: cantilever, shear by the strain energy of distortion, the notch of a sharp root
 * @example ledgeStress({ force: 100, arm: 1.5, root: 50, thickness: 3 }) // 4.62
 */
export function ledgeStress(p: {
  readonly force: number;
  readonly arm: number;
  readonly root: number;
  readonly thickness: number;
}): number {
  requireNotNegative('force', p.force);
  requireNotNegative('arm', p.arm);
  requirePositive('root', p.root);
  requirePositive('thickness', p.thickness);
  const shear = p.force / (p.root * p.thickness);
  const bending = (6 * shear * p.arm) / p.thickness;
  return rootNotch({ fillet: 0, thickness: p.thickness }) * Math.sqrt(bending ** 2 + 3 * shear ** 2);
}
