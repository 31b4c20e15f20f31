import { requireNotNegative, requirePositive } from '../units/require.js';
import { COLUMN_DEFAULTS } from './column.js';

/**
 * Side force with which a held end sends the run-out of a bent screw back to its nut: the screw stands in the motor, in the
 * nut as a middle support, and in the holder.
 *
 *     F = 3·E·I·e / (x²·(a + x)),   I = π·dr⁴/64
 *
 * @param p.rootDiameter  dr  root diameter of the screw                 [mm]   > 0
 * @param p.runout        e   that is forced straight at the holder      [mm]   0 or above
 * @param p.toHolder      x   from the nut to the holder                 [mm]   > 0
 * @param p.toMotor       a   from the motor to the nut                  [mm]   0 or above; 0 with a nut that is stiff against tilting
 * @param p.modulus       E   modulus of elasticity                      [MPa]  > 0, default 207000
 * @returns F [N]
 * @throws InputError  a value is outside its range
 * @source derived: beam with an overhang
 * @example endSideForce({ rootDiameter: 5.5, runout: 0.2, toHolder: 24, toMotor: 276 }) // 32.3
 */
export function endSideForce(p: {
  readonly rootDiameter: number;
  readonly runout: number;
  readonly toHolder: number;
  readonly toMotor: number;
  readonly modulus?: number | undefined;
}): number {
  const { modulus = COLUMN_DEFAULTS.modulus } = p;
  requirePositive('rootDiameter', p.rootDiameter);
  requireNotNegative('runout', p.runout);
  requirePositive('toHolder', p.toHolder);
  requireNotNegative('toMotor', p.toMotor);
  requirePositive('modulus', modulus);
  const inertia = (Math.PI * p.rootDiameter ** 4) / 64;
  return (3 * modulus * inertia * p.runout) / (p.toHolder ** 2 * (p.toMotor + p.toHolder));
}
