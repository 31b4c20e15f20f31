import { requireNotNegative } from '../../units/require.js';
import { collarTorque, flankFriction, type LoadedThread, requireRubbingThread } from './thread.js';

/**
 * Torque to turn a power screw along with its axial load; below 0 the load drives the screw.
 *
 *     T = (F·dm / 2) · (π·f·dm·sec α − l) / (π·dm + f·l·sec α) + F·fc·dc / 2
 *
 * @param p.axialForce      F   load along the axis                     [N]        0 or above
 * @param p.meanDiameter    dm  mean thread diameter, pitch diameter    [mm]       > 0
 * @param p.lead            l   travel per turn = pitch × starts        [mm]       > 0
 * @param p.flankAngle      α   one flank                               [degrees]  0 to 60
 * @param p.friction        f   sliding friction of the thread          [-]        0 to 2
 * @param p.collarFriction  fc  sliding friction of the thrust collar   [-]        0 to 2, default 0
 * @param p.collarDiameter  dc  mean diameter of the thrust collar      [mm]       needed with collarFriction
 * @returns T, negative where a brake is needed [N·mm]
 * @throws InputError  a value is outside its range
 * @source textbook-design: power screws, lowering torque with collar
 * @example loweringTorque({ axialForce: 6400, meanDiameter: 30, lead: 8, flankAngle: 0, friction: 0.08 }) // -465.6
 */
export function loweringTorque(p: LoadedThread): number {
  requireNotNegative('axialForce', p.axialForce);
  requireRubbingThread(p);
  const f = flankFriction(p);
  const around = Math.PI * p.meanDiameter;
  return ((p.axialForce * p.meanDiameter) / 2) * ((f * around - p.lead) / (around + f * p.lead)) + collarTorque(p);
}
