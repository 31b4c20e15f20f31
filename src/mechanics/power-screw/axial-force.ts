import { requireNotNegative } from '../../units/require.js';
import { raisingTorque } from './raising-torque.js';
import type { RubbingThread } from './thread.js';

/**
 * Axial force that a torque at the screw can push with.
 *
 *     F = 2π·η·T / l
 *
 * @param p.torque          T   torque at the screw                     [N·mm]     0 or above
 * @param p.meanDiameter    dm  mean thread diameter, pitch diameter    [mm]       > 0
 * @param p.lead            l   travel per turn                         [mm]       > 0
 * @param p.flankAngle      α   one flank                               [degrees]  0 to 60
 * @param p.friction        f   sliding friction of the thread          [-]        0 to 2
 * @param p.collarFriction  fc  sliding friction of the thrust collar   [-]        0 to 2, default 0
 * @param p.collarDiameter  dc  mean diameter of the thrust collar      [mm]       needed with collarFriction
 * @returns F [N]
 * @throws InputError  a value is outside its range, or π·dm ≤ f·l·sec α
 * @source textbook-design: power screws, raising torque solved for the force
 * @example axialForceFromTorque({ torque: 300, meanDiameter: 7, lead: 2, flankAngle: 15, friction: 0.2 }) // 282.2
 */
export function axialForceFromTorque(p: RubbingThread & { readonly torque: number }): number {
  requireNotNegative('torque', p.torque);
  return p.torque / raisingTorque({ ...p, axialForce: 1 });
}
