import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Torque at which a set screw lets the shaft turn, with a factor of safety.
 *
 *     T = F·d / (2·S)
 *
 * @param p.holdingPower  F  axial holding power of the screw, from its table   [N]   0 or above
 * @param p.diameter      d  shaft diameter                                     [mm]  > 0
 * @param p.safety        S  factor of safety                                   [-]   > 0, default 2: static; 4 to 8 when the load shakes
 * @returns T [N·mm]
 * @throws InputError  a value is outside its range
 * @validity steel screw in a steel hub; in a printed hub the plastic gives way long before
 * @source textbook-design: set screws, holding power
 * @example setScrewTorque({ holdingPower: 385, diameter: 5 }) // 481.25
 */
export function setScrewTorque(p: {
  readonly holdingPower: number;
  readonly diameter: number;
  readonly safety?: number | undefined;
}): number {
  const { safety = 2 } = p;
  requireNotNegative('holdingPower', p.holdingPower);
  requirePositive('diameter', p.diameter);
  requirePositive('safety', safety);
  return (p.holdingPower * p.diameter) / (2 * safety);
}
