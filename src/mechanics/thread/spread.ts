import { requireNotNegative, requireRange } from '../../units/require.js';
import { radians } from '../angle.js';

/**
 * Force with which a loaded screw wedges the two halves of a nut apart, its flanks without friction.
 *
 *     S = F·tan α / π
 *
 * @param p.axialForce  F  load along the axis  [N]        0 or above
 * @param p.flankAngle  α  one flank            [degrees]  0 to 60
 * @returns S, across the joint of the halves [N]
 * @throws InputError  a value is outside its range
 * @source derived: the radial push F·tan α, spread evenly over the turn, summed over one half
 * @example spreadForce({ axialForce: 100, flankAngle: 15 }) // 8.529
 */
export function spreadForce(p: { readonly axialForce: number; readonly flankAngle: number }): number {
  requireNotNegative('axialForce', p.axialForce);
  requireRange('flankAngle', p.flankAngle, 0, 60);
  return (p.axialForce * Math.tan(radians(p.flankAngle))) / Math.PI;
}
