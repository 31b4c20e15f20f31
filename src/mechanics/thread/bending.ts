import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive } from '../../units/require.js';
import { carryingTurns, type Engagement } from './engagement.js';

/**
 * Lever of the load on a nut's tooth: from its root at the nut's major to the middle of the contact, since the flanks
 * meet only between the nut's minor and the screw's major.
 *
 *     a = (D4 − (D1 + d)/2) / 2
 *
 * @param p.rootDiameter  D4  nut major, where the tooth is rooted  [mm]  > 0
 * @param p.nutMinor      D1  nut minor                             [mm]  > 0
 * @param p.screwMajor    d   over the screw's crests               [mm]  > 0
 * @returns a [mm]
 * @throws InputError  a value is not above 0, or the contact lies outside the root
 * @source derived: middle of the flanks' overlap
 * @example toothArm({ rootDiameter: 8.8, nutMinor: 6.3, screwMajor: 8 }) // 0.825
 */
export function toothArm(p: {
  readonly rootDiameter: number;
  readonly nutMinor: number;
  readonly screwMajor: number;
}): number {
  requirePositive('rootDiameter', p.rootDiameter);
  requirePositive('nutMinor', p.nutMinor);
  requirePositive('screwMajor', p.screwMajor);
  const arm = (p.rootDiameter - (p.nutMinor + p.screwMajor) / 2) / 2;
  if (arm <= 0) throw fault('rootDiameter', p.rootDiameter, 'must be above the middle of the contact');
  return arm;
}

/**
 * Bending stress at the root of a thread tooth, as a short cantilever. With a square tooth, p/2 deep and wide, loaded in
 * its middle, it is 6·F/(π·D·n·p).
 *
 *     σ = 6·F·a / (π·D·w²·q·Le/P)
 *
 * @param p.axialForce     F   load along the axis                                       [N]   0 or above
 * @param p.rootDiameter   D   diameter of the root: a nut's major, a screw's minor      [mm]  > 0
 * @param p.rootWidth      w   axial width of the tooth there                            [mm]  > 0
 * @param p.arm            a   radial distance of the load from the root, `toothArm`     [mm]  > 0
 * @param p.engagedLength  Le  engaged length                                            [mm]  > 0
 * @param p.pitch          P   pitch                                                     [mm]  > 0
 * @param p.share          q   share of the turns that carry                             [-]   above 0 to 1, default 0.5
 * @returns σ [MPa]
 * @throws InputError  a value is outside its range
 * @source textbook-design: power screws, thread bending
 * @example threadBending({ axialForce: 2432, rootDiameter: 28, rootWidth: 2, arm: 1, engagedLength: 4, pitch: 4, share: 1 }) // 41.47
 */
export function threadBending(
  p: Engagement & {
    readonly axialForce: number;
    readonly rootDiameter: number;
    readonly rootWidth: number;
    readonly arm: number;
  },
): number {
  requireNotNegative('axialForce', p.axialForce);
  requirePositive('rootDiameter', p.rootDiameter);
  requirePositive('rootWidth', p.rootWidth);
  requirePositive('arm', p.arm);
  return (6 * p.axialForce * p.arm) / (Math.PI * p.rootDiameter * p.rootWidth ** 2 * carryingTurns(p));
}
