import { requireNotNegative, requirePositive } from '../../units/require.js';
import { carryingTurns, type Engagement } from './engagement.js';

/**
 * Bending stress at the root of a thread tooth, as a short cantilever that carries its load at half its depth. With a
 * square tooth, p/2 deep and wide, it is 6·F/(π·D·n·p).
 *
 *     σ = 3·F·H / (π·D·w²·q·Le/P)
 *
 * @param p.axialForce     F   load along the axis                                       [N]   0 or above
 * @param p.rootDiameter   D   diameter of the root: a nut's major, a screw's minor      [mm]  > 0
 * @param p.rootWidth      w   axial width of the tooth there                            [mm]  > 0
 * @param p.depth          H   radial depth of the tooth                                 [mm]  > 0
 * @param p.engagedLength  Le  engaged length                                            [mm]  > 0
 * @param p.pitch          P   pitch                                                     [mm]  > 0
 * @param p.share          q   share of the turns that carry                             [-]   above 0 to 1, default 0.5
 * @returns σ [MPa]
 * @throws InputError  a value is outside its range
 * @source textbook-design: power screws, thread bending
 * @example threadBending({ axialForce: 2432, rootDiameter: 28, rootWidth: 2, depth: 2, engagedLength: 4, pitch: 4, share: 1 }) // 41.47
 */
export function threadBending(
  p: Engagement & {
    readonly axialForce: number;
    readonly rootDiameter: number;
    readonly rootWidth: number;
    readonly depth: number;
  },
): number {
  requireNotNegative('axialForce', p.axialForce);
  requirePositive('rootDiameter', p.rootDiameter);
  requirePositive('rootWidth', p.rootWidth);
  requirePositive('depth', p.depth);
  return (3 * p.axialForce * p.depth) / (Math.PI * p.rootDiameter * p.rootWidth ** 2 * carryingTurns(p));
}
