import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Bending stress in a flange where it meets its body: the load comes from the thread, the bolts hold against it.
 *
 *     σ = 6·F·e / (π·Db·t²)        e = (circle − Db)/2
 *
 * @param p.axialForce    F       load along the axis                    [N]   0 or above
 * @param p.bodyDiameter  Db      diameter of the body at the flange     [mm]  > 0
 * @param p.boltCircle            diameter of the bolt circle            [mm]  > 0; within the body gives no bending
 * @param p.thickness     t       of the flange                          [mm]  > 0
 * @returns σ [MPa]
 * @throws InputError  a value is outside its range
 * @validity a ring of beams clamped at the body; a real plate carries some of it around and has less
 * @source derived: moment of the bolts over the ring where flange and body meet
 * @example flangeBending({ axialForce: 100, bodyDiameter: 14, boltCircle: 23, thickness: 4 }) // 3.837
 */
export function flangeBending(p: {
  readonly axialForce: number;
  readonly bodyDiameter: number;
  readonly boltCircle: number;
  readonly thickness: number;
}): number {
  requireNotNegative('axialForce', p.axialForce);
  requirePositive('bodyDiameter', p.bodyDiameter);
  requirePositive('boltCircle', p.boltCircle);
  requirePositive('thickness', p.thickness);
  const arm = Math.max(0, p.boltCircle - p.bodyDiameter) / 2;
  return (6 * p.axialForce * arm) / (Math.PI * p.bodyDiameter * p.thickness ** 2);
}
