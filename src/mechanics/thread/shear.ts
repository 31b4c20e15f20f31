import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive, requireRange } from '../../units/require.js';
import { radians } from '../angle.js';
import { carryingTurns, type Engagement } from './engagement.js';

/**
 * Axial width of a thread tooth at a radial distance from the pitch line, towards its root.
 *
 *     w = P/2 − a + 2·r·tan α
 *
 * @param p.pitch       P  pitch                                                 [mm]       > 0
 * @param p.flankAngle  α  one flank                                             [degrees]  0 to 60
 * @param p.inward      r  radial distance from the pitch line towards the root  [mm]       0 or above
 * @param p.thinning    a  how much the tooth is thinned for axial play          [mm]       0 or above, default 0
 * @returns w [mm]
 * @throws InputError  a value is outside its range, or nothing is left of the tooth
 * @source iso-2901: basic profile, half the pitch at the pitch line
 * @example toothWidth({ pitch: 2, flankAngle: 15, inward: 0.5 }) // 1.268
 */
export function toothWidth(p: {
  readonly pitch: number;
  readonly flankAngle: number;
  readonly inward: number;
  readonly thinning?: number | undefined;
}): number {
  const { thinning = 0 } = p;
  requirePositive('pitch', p.pitch);
  requireRange('flankAngle', p.flankAngle, 0, 60);
  requireNotNegative('inward', p.inward);
  requireNotNegative('thinning', thinning);
  const width = p.pitch / 2 - thinning + 2 * p.inward * Math.tan(radians(p.flankAngle));
  if (width <= 0) throw fault('thinning', thinning, 'must leave some of the tooth');
  return width;
}

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
