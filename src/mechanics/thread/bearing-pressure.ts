import { requireNotNegative, requirePositive } from '../../units/require.js';
import { carryingTurns, type Engagement } from './engagement.js';

/**
 * Pressure on the flanks of a nut, over the projected area of the turns that carry.
 *
 *     p = F / (π·d2·H1·q·Le/P)
 *
 * @param p.axialForce     F   load along the axis                              [N]   0 or above
 * @param p.pitchDiameter  d2  pitch diameter                                   [mm]  > 0
 * @param p.flankDepth     H1  radial overlap of the flanks, clearance taken off [mm]  > 0
 * @param p.engagedLength  Le  engaged length                                   [mm]  > 0
 * @param p.pitch          P   pitch                                            [mm]  > 0
 * @param p.share          q   share of the turns that carry                    [-]   above 0 to 1, default 0.5
 * @returns p [MPa]
 * @throws InputError  a value is outside its range
 * @source textbook-design: power screws, bearing stress
 * @example threadPressure({ axialForce: 50, pitchDiameter: 7, flankDepth: 0.8, engagedLength: 15, pitch: 2, share: 1 }) // 0.379
 */
export function threadPressure(
  p: Engagement & { readonly axialForce: number; readonly pitchDiameter: number; readonly flankDepth: number },
): number {
  requireNotNegative('axialForce', p.axialForce);
  requirePositive('pitchDiameter', p.pitchDiameter);
  requirePositive('flankDepth', p.flankDepth);
  return p.axialForce / (Math.PI * p.pitchDiameter * p.flankDepth * carryingTurns(p));
}
