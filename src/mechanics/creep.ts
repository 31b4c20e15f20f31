import { requirePositive, requireRange } from '../units/require.js';

/** Degrees of warmth that halve what plastic carries for good [°C]. */
const HALVING = 15;
const ROOM = 25;

/**
 * Share of its short-term strength that a printed plastic carries for good: halved for every 15 °C above 25 °C.
 *
 *     q(T) = q₀·2^(−max(0, T − 25)/15)
 *
 * @param p.share        q₀  long-term share at room temperature     [-]   above 0 to 1
 * @param p.temperature  T   temperature of the part                 [°C]  −40 to 250
 * @returns q [-]
 * @throws InputError  a value is outside its range
 * @validity up to 20 °C below softening; above that no lasting load at all
 * @source common-practice: creep of printed plastics, the careful end of 15 to 20 °C
 * @example longTermShare({ share: 0.2, temperature: 40 }) // 0.1
 */
export function longTermShare(p: { readonly share: number; readonly temperature: number }): number {
  requirePositive('share', p.share);
  requireRange('share', p.share, 0, 1);
  requireRange('temperature', p.temperature, -40, 250);
  return p.share * 2 ** (-Math.max(0, p.temperature - ROOM) / HALVING);
}
