import { GREASED_LEAST } from '../../mechanics/friction.js';
import { loweringTorque } from '../../mechanics/power-screw/lowering-torque.js';
import type { CollarDesign } from './dimensions.js';
import type { CollarPlan } from './plan.js';

/** Friction of a thrust bearing's rolling, and of a face of plastic that rubs, on the high side. @source common-practice */
const ROLLS = 0.005;
const RUBS = 0.5;

/**
 * Torque that turns a threaded collar along its screw: the load down its thread, where no friction holds it, and the drag of
 * what the collar runs on.
 *
 *     M = F·l/(2π) + µ·F·r
 *
 * @param force  F  along the screw [N]
 * @returns M [N·mm]
 */
export function unscrewingTorque(design: Pick<CollarDesign, 'finished' | 'bearing'>, force: number): number {
  return force * ((design.finished.thread?.lead ?? 0) / (2 * Math.PI)) + drag(design, force);
}

/**
 * Torque that a clamp must hold against a threaded collar that turns along its screw, whose flanks are as slippery as grease makes them:
 *
 *     M = max(0, F·d₂/2·(l − π·f·d₂)/(π·d₂ + f·l)) + µ·F·r,  f = 0.05/cos α
 *
 * @param force  F  along the screw [N]
 * @returns M [N·mm]
 */
export function slippingTorque(design: Pick<CollarDesign, 'finished' | 'bearing' | 'screw'>, force: number): number {
  const { screw } = design;
  if (!screw) return 0;
  const held = loweringTorque({
    axialForce: force,
    meanDiameter: screw.pitchDiameter.likely,
    lead: screw.lead,
    flankAngle: screw.flankAngle,
    friction: GREASED_LEAST,
  });
  return Math.max(0, -held) + drag(design, force);
}

function drag({ finished, bearing }: Pick<CollarDesign, 'finished' | 'bearing'>, force: number): number {
  const radius = bearing ? (bearing.bore + bearing.outside) / 4 : finished.outside / 2;
  return (bearing ? ROLLS : RUBS) * force * radius;
}

/**
 * Greatest pressure of a pin through the axis on its hole, which grows from the bore outwards as the radius.
 *
 *     p = 3·M·R / (2·d·(R³ − r³))
 *
 * @param plan    R outside, r bore, d pin
 * @param torque  M [N·mm]
 * @returns p [MPa]
 */
export function pinPressure(
  { outside, bore, pin }: Pick<CollarPlan, 'outside' | 'bore'> & Required<Pick<CollarPlan, 'pin'>>,
  torque: number,
): number {
  const [outer, inner] = [outside / 2, bore.diameter / 2];
  return (3 * torque * outer) / (2 * pin.hole * (outer ** 3 - inner ** 3));
}
