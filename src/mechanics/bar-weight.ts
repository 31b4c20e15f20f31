import { requirePositive } from '../units/require.js';

/** Density of steel [kg/mm³] and fall acceleration [m/s²]. */
const STEEL = 7.85e-6;
const FALL = 9.80665;

/**
 * Weight of a round steel bar, such as a screw that hangs.
 *
 *     W = π/4·d²·L·ρ·g
 *
 * @param p.diameter  d  of the bar; of a screw over its crests, on the heavy side    [mm]  > 0
 * @param p.length    L  of the bar                                                   [mm]  > 0
 * @returns W [N]
 * @throws InputError  a value is not above 0
 * @source derived: volume, density of steel 7.85 g/cm³
 * @example barWeight({ diameter: 8, length: 300 }) // 1.161
 */
export function barWeight(p: { readonly diameter: number; readonly length: number }): number {
  requirePositive('diameter', p.diameter);
  requirePositive('length', p.length);
  return (Math.PI / 4) * p.diameter ** 2 * p.length * STEEL * FALL;
}
