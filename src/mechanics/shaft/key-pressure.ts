import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Pressure of a parallel key on the side of its keyway in the hub.
 *
 *     p = 2·T / (d·L·h)
 *
 * @param p.torque    T  carried by the key                       [N·mm]  0 or above
 * @param p.diameter  d  shaft diameter                           [mm]    > 0
 * @param p.length    L  engaged length of the key                [mm]    > 0
 * @param p.depth     h  of the keyway side that bears            [mm]    > 0
 * @returns p [MPa]
 * @throws InputError  a value is outside its range
 * @source textbook-design: keys, bearing
 * @example keyPressure({ torque: 10000, diameter: 14, length: 20, depth: 2.3 }) // 31.06
 */
export function keyPressure(p: {
  readonly torque: number;
  readonly diameter: number;
  readonly length: number;
  readonly depth: number;
}): number {
  requireNotNegative('torque', p.torque);
  requirePositive('diameter', p.diameter);
  requirePositive('length', p.length);
  requirePositive('depth', p.depth);
  return (2 * p.torque) / (p.diameter * p.length * p.depth);
}
