import { FRICTION, GREASED_LEAST } from '../../mechanics/friction.js';
import { axialForceFromTorque } from '../../mechanics/power-screw/axial-force.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';

/**
 * Force with which a stalled motor pushes its nut, where friction takes least of it: a screw that nobody calls dry may be greased.
 * @returns undefined where the motor is not told [N]
 */
export function stallForce({ duty, screw }: { readonly duty: DutySheet; readonly screw: Screw }): number | undefined {
  const { torque, gear = 1 } = duty.motor ?? {};
  if (torque === undefined) return undefined;
  return axialForceFromTorque({
    torque: torque * gear,
    meanDiameter: screw.pitchDiameter.likely,
    lead: screw.lead,
    flankAngle: screw.flankAngle,
    friction: duty.grease === 'dry' ? FRICTION.low : GREASED_LEAST,
  });
}
