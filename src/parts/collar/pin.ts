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
export function unscrewingTorque(
  { finished, bearing }: Pick<CollarDesign, 'finished' | 'bearing'>,
  force: number,
): number {
  const radius = bearing ? (bearing.bore + bearing.outside) / 4 : finished.outside / 2;
  return force * ((finished.thread?.lead ?? 0) / (2 * Math.PI) + (bearing ? ROLLS : RUBS) * radius);
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
