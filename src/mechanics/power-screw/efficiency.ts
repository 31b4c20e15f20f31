import { raisingTorque } from './raising-torque.js';
import { canBeRaised, type RubbingThread, requireRubbingThread } from './thread.js';

/**
 * Share of the turning work that becomes lifting work.
 *
 *     η = F·l / (2π·T)      without a collar the same as tan λ / tan(λ + atan(f·sec α))
 *
 * @param p.meanDiameter    dm  mean thread diameter, pitch diameter    [mm]       > 0
 * @param p.lead            l   travel per turn                         [mm]       > 0
 * @param p.flankAngle      α   one flank                               [degrees]  0 to 60
 * @param p.friction        f   sliding friction of the thread          [-]        0 to 2
 * @param p.collarFriction  fc  sliding friction of the thrust collar   [-]        0 to 2, default 0
 * @param p.collarDiameter  dc  mean diameter of the thrust collar      [mm]       needed with collarFriction
 * @returns η, 0 to 1 [-]; 0 where no torque raises the load (π·dm ≤ f·l·sec α)
 * @throws InputError  a value is outside its range
 * @source textbook-design: power screws, efficiency
 * @example efficiency({ meanDiameter: 7, lead: 2, flankAngle: 15, friction: 0.2 }) // 0.2994
 */
export function efficiency(p: RubbingThread): number {
  requireRubbingThread(p);
  if (!canBeRaised(p)) return 0;
  return p.lead / (2 * Math.PI * raisingTorque({ ...p, axialForce: 1 }));
}
