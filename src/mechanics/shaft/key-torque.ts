import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Torque that a parallel key carries at an even pressure on the side of its keyway in the hub.
 *
 *     T = p·d·L·h / 2
 *
 * @param p.pressure  p  on the side of the keyway                [MPa]  0 or above
 * @param p.diameter  d  shaft diameter                           [mm]   > 0
 * @param p.length    L  engaged length of the key                [mm]   > 0
 * @param p.depth     h  of the keyway side that bears            [mm]   > 0
 * @returns T [N·mm]
 * @throws InputError  a value is outside its range
 * @source textbook-design: keys, bearing
 * @example keyTorque({ pressure: 30, diameter: 14, length: 20, depth: 2.3 }) // 9660
 */
export function keyTorque(p: {
  readonly pressure: number;
  readonly diameter: number;
  readonly length: number;
  readonly depth: number;
}): number {
  requireNotNegative('pressure', p.pressure);
  requirePositive('diameter', p.diameter);
  requirePositive('length', p.length);
  requirePositive('depth', p.depth);
  return (p.pressure * p.diameter * p.length * p.depth) / 2;
}
