import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive } from '../../units/require.js';

/** K, torque factor of a dry steel screw [-]. */
const TORQUE_FACTOR = 0.2;

/**
 * Force that a tightening torque sets up in a screw.
 *
 *     F = T / (K·d)
 *
 * @param p.torque    T  tightening torque      [N·mm]  0 or above
 * @param p.diameter  d  nominal diameter       [mm]    > 0
 * @param p.factor    K  torque factor          [-]     > 0, default 0.2: dry steel; 0.15 well lubricated
 * @returns F [N]
 * @throws InputError  a value is outside its range
 * @validity metal on metal; a torque wrench spreads it by about ± 25 %
 * @source tightening-chart: torque factor
 * @example preloadFromTorque({ torque: 1344, diameter: 3 }) // 2240
 */
export function preloadFromTorque(p: {
  readonly torque: number;
  readonly diameter: number;
  readonly factor?: number | undefined;
}): number {
  const { factor = TORQUE_FACTOR } = p;
  requireNotNegative('torque', p.torque);
  requirePositive('diameter', p.diameter);
  requirePositive('factor', factor);
  return p.torque / (factor * p.diameter);
}

/**
 * Torque that sets up a force in a screw.
 *
 *     T = K·F·d
 *
 * @param p.preload   F  force wanted           [N]   0 or above
 * @param p.diameter  d  nominal diameter       [mm]  > 0
 * @param p.factor    K  torque factor          [-]   > 0, default 0.2
 * @returns T [N·mm]
 * @throws InputError  a value is outside its range
 * @source tightening-chart: torque factor
 * @example torqueForPreload({ preload: 500, diameter: 3 }) // 300
 */
export function torqueForPreload(p: {
  readonly preload: number;
  readonly diameter: number;
  readonly factor?: number | undefined;
}): number {
  const { factor = TORQUE_FACTOR } = p;
  requireNotNegative('preload', p.preload);
  requirePositive('diameter', p.diameter);
  requirePositive('factor', factor);
  return factor * p.preload * p.diameter;
}

/**
 * Pressure under a screw's head or washer.
 *
 *     p = F / (π/4·(dk² − dh²))
 *
 * @param p.preload       F   force in the screw                  [N]   0 or above
 * @param p.headDiameter  dk  diameter of head or washer          [mm]  above the hole
 * @param p.holeDiameter  dh  diameter of the hole                [mm]  > 0
 * @returns p [MPa]
 * @throws InputError  a value is outside its range
 * @source derived: force over the ring of contact
 * @example pressureUnderHead({ preload: 500, headDiameter: 7, holeDiameter: 3.4 }) // 17.004
 */
export function pressureUnderHead(p: {
  readonly preload: number;
  readonly headDiameter: number;
  readonly holeDiameter: number;
}): number {
  requireNotNegative('preload', p.preload);
  requirePositive('holeDiameter', p.holeDiameter);
  if (!(p.headDiameter > p.holeDiameter)) throw fault('headDiameter', p.headDiameter, 'must be above the hole');
  return p.preload / ((Math.PI / 4) * (p.headDiameter ** 2 - p.holeDiameter ** 2));
}
