import { requireNotNegative, requirePositive } from '../../units/require.js';
import { carryingTurns, type Engagement } from './engagement.js';

/**
 * Mean shear stress at the root of the teeth, over the turns that carry.
 *
 *     τ = F / (π·D·w·q·Le/P)
 *
 * @param p.axialForce     F   load along the axis                                       [N]   0 or above
 * @param p.rootDiameter   D   diameter of the root: a nut's major, a screw's minor      [mm]  > 0
 * @param p.rootWidth      w   axial width of the tooth there                            [mm]  > 0
 * @param p.engagedLength  Le  engaged length                                            [mm]  > 0
 * @param p.pitch          P   pitch                                                     [mm]  > 0
 * @param p.share          q   share of the turns that carry                             [-]   above 0 to 1, default 0.5
 * @returns τ, mean [MPa]; the peak of a rectangle is 1.5 times that
 * @throws InputError  a value is outside its range
 * @source textbook-design: power screws, thread shear
 * @example threadShear({ axialForce: 100, rootDiameter: 8.5, rootWidth: 1.4, engagedLength: 15, pitch: 2, share: 1 }) // 0.3566
 */
export function threadShear(
  p: Engagement & { readonly axialForce: number; readonly rootDiameter: number; readonly rootWidth: number },
): number {
  requireNotNegative('axialForce', p.axialForce);
  requirePositive('rootDiameter', p.rootDiameter);
  requirePositive('rootWidth', p.rootWidth);
  return p.axialForce / (Math.PI * p.rootDiameter * p.rootWidth * carryingTurns(p));
}
