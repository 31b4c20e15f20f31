import { requireNotNegative, requireRange } from '../../units/require.js';

/**
 * Pressure times sliding speed, which heats a plastic nut; the share of time in motion lowers it.
 *
 *     PV = p·vs·m
 *
 * @param p.pressure      p   flank pressure               [MPa]   0 or above
 * @param p.slidingSpeed  vs  sliding speed of the flanks  [mm/s]  0 or above
 * @param p.moving        m   share of the time in motion  [-]     0 to 1, default 1
 * @returns PV [MPa·m/s]
 * @throws InputError  a value is outside its range
 * @source common-practice: plastic nuts, pressure and speed
 * @example pressureVelocity({ pressure: 0.38, slidingSpeed: 110 }) // 0.0418
 */
export function pressureVelocity(p: {
  readonly pressure: number;
  readonly slidingSpeed: number;
  readonly moving?: number | undefined;
}): number {
  const { moving = 1 } = p;
  requireNotNegative('pressure', p.pressure);
  requireNotNegative('slidingSpeed', p.slidingSpeed);
  requireRange('moving', moving, 0, 1);
  return (p.pressure * p.slidingSpeed * moving) / 1000;
}

/**
 * Depth of wear, which adds to the axial play.
 *
 *     h = k·p·s
 *
 * @param p.wearRate         k  wear rate of the pair          [mm/(km·MPa)]  0 or above; dry printed PLA about 0.2
 * @param p.pressure         p  flank pressure                 [MPa]          0 or above
 * @param p.slidingDistance  s  distance the flanks slide      [mm]           0 or above
 * @returns h [mm]
 * @throws InputError  a value is outside its range
 * @validity an order of magnitude; rates in print differ by a factor of ten
 * @source common-practice: wear of plastic nuts
 * @example wearDepth({ wearRate: 0.2, pressure: 0.15, slidingDistance: 3.3e6 }) // 0.099
 */
export function wearDepth(p: {
  readonly wearRate: number;
  readonly pressure: number;
  readonly slidingDistance: number;
}): number {
  requireNotNegative('wearRate', p.wearRate);
  requireNotNegative('pressure', p.pressure);
  requireNotNegative('slidingDistance', p.slidingDistance);
  return (p.wearRate * p.pressure * p.slidingDistance) / 1e6;
}
