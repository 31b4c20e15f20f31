import { radians } from '../angle.js';
import { requireThread, type ScrewThread } from './thread.js';

/**
 * Thread friction above which the load cannot turn the screw, collar left aside.
 *
 *     f₀ = tan λ · cos α = l·cos α / (π·dm)
 *
 * @param p.meanDiameter  dm  mean thread diameter, pitch diameter  [mm]       > 0
 * @param p.lead          l   travel per turn                       [mm]       > 0
 * @param p.flankAngle    α   one flank                             [degrees]  0 to 60
 * @returns f₀ [-]
 * @throws InputError  a value is outside its range
 * @validity at rest; vibration lowers the friction that is really there
 * @source textbook-design: power screws, self-locking condition
 * @example selfLockingFriction({ meanDiameter: 7, lead: 2, flankAngle: 15 }) // 0.0878
 */
export function selfLockingFriction(p: ScrewThread): number {
  requireThread(p);
  return (p.lead * Math.cos(radians(p.flankAngle))) / (Math.PI * p.meanDiameter);
}
