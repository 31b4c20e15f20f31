import { fault } from '../../units/faults.js';
import { requireNotNegative } from '../../units/require.js';
import { canBeRaised, collarTorque, flankFriction, type LoadedThread, requireRubbingThread } from './thread.js';

/**
 * Torque to turn a power screw against its axial load.
 *
 *     T = (F·dm / 2) · (l + π·f·dm·sec α) / (π·dm − f·l·sec α) + F·fc·dc / 2
 *
 * @param p.axialForce      F   load along the axis                     [N]        0 or above
 * @param p.meanDiameter    dm  mean thread diameter, pitch diameter    [mm]       > 0
 * @param p.lead            l   travel per turn = pitch × starts        [mm]       > 0
 * @param p.flankAngle      α   one flank                               [degrees]  0 to 60
 * @param p.friction        f   sliding friction of the thread          [-]        0 to 2
 * @param p.collarFriction  fc  sliding friction of the thrust collar   [-]        0 to 2, default 0
 * @param p.collarDiameter  dc  mean diameter of the thrust collar      [mm]       needed with collarFriction
 * @returns T [N·mm]
 * @throws InputError  a value is outside its range, or π·dm ≤ f·l·sec α (no torque raises the load)
 * @validity sec α of the axial section, not of the normal one: 0.05 % off at 8° of lead angle, 0.2 % at 20° (f 0.2)
 * @source textbook-design: power screws, raising torque with collar
 * @example raisingTorque({ axialForce: 6400, meanDiameter: 30, lead: 8, flankAngle: 0, friction: 0.08 }) // 15937
 */
export function raisingTorque(p: LoadedThread): number {
  requireNotNegative('axialForce', p.axialForce);
  requireRubbingThread(p);
  if (!canBeRaised(p)) {
    throw fault('friction', p.friction, 'must be below π·meanDiameter·cos(flankAngle) / lead, or no torque raises it');
  }
  const f = flankFriction(p);
  const around = Math.PI * p.meanDiameter;
  return ((p.axialForce * p.meanDiameter) / 2) * ((p.lead + f * around) / (around - f * p.lead)) + collarTorque(p);
}
