import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive, requireRange } from '../../units/require.js';
import { ROOM } from '../strength/plastic.js';

/** What grease adds to the PV of a dry nut: put on once, or kept up. @source common-practice */
export const GREASE = { dry: 1, once: 1.3, kept: 2 } as const;

/**
 * PV that a plastic nut bears in warm air, greased or dry.
 *
 *     PV = PV₀·g·(T_s − T)/(T_s − 23), at most PV₀·g; 0 where T_s is reached
 *
 * @param p.dry            PV₀  at 23 °C, dry                          [MPa·m/s]  > 0
 * @param p.grease         g    1 dry, 1.3 greased once, 2 kept so     [-]        1 or above
 * @param p.temperature    T    of the air around it                   [°C]       −40 to 250
 * @param p.standingLimit  T_s  above which nothing stands on it       [°C]       above 23
 * @returns PV [MPa·m/s]
 * @throws InputError  a value is outside its range
 * @source common-practice: a bearing maker’s guide on grease
 * @source derived: friction may warm it so far as the air leaves room
 * @example bearablePv({ dry: 0.1, grease: 1.3, temperature: 51.5, standingLimit: 80 }) // 0.065
 */
export function bearablePv(p: {
  readonly dry: number;
  readonly grease: number;
  readonly temperature: number;
  readonly standingLimit: number;
}): number {
  requirePositive('dry', p.dry);
  requireRange('grease', p.grease, 1, 10);
  requireRange('temperature', p.temperature, -40, 250);
  if (p.standingLimit <= ROOM) throw fault('standingLimit', p.standingLimit, `must be above ${ROOM} °C`);
  const room = (p.standingLimit - p.temperature) / (p.standingLimit - ROOM);
  return p.dry * p.grease * Math.min(1, Math.max(0, room));
}

/**
 * Pressure times sliding speed, which heats a plastic nut.
 *
 *     PV = p·vs
 *
 * @param p.pressure      p   flank pressure               [MPa]   0 or above
 * @param p.slidingSpeed  vs  sliding speed of the flanks  [mm/s]  0 or above
 * @returns PV [MPa·m/s]
 * @throws InputError  a value is outside its range
 * @source common-practice: plastic nuts, pressure and speed
 * @example pressureVelocity({ pressure: 0.38, slidingSpeed: 110 }) // 0.0418
 */
export function pressureVelocity(p: { readonly pressure: number; readonly slidingSpeed: number }): number {
  requireNotNegative('pressure', p.pressure);
  requireNotNegative('slidingSpeed', p.slidingSpeed);
  return (p.pressure * p.slidingSpeed) / 1000;
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
