import { fault } from '../units/faults.js';
import { requirePositive } from '../units/require.js';

/**
 * Turn at one coupling that takes out a difference in height between the two ends of an axis on two screws.
 *
 *     φ = 360°·Δ / l
 *
 * @param p.difference  Δ  how much one end is higher than the other  [mm]  any sign
 * @param p.lead        l  travel per turn                            [mm]  > 0
 * @returns φ, with the sign of the difference [degrees]
 * @throws InputError  a value is not a number, or the lead is not above 0
 * @source derived: from the definition of lead
 * @example endDifference({ difference: 0.1, lead: 8 }) // 4.5
 */
export function endDifference(p: { readonly difference: number; readonly lead: number }): number {
  if (!Number.isFinite(p.difference)) throw fault('difference', p.difference, 'must be a number');
  requirePositive('lead', p.lead);
  return (360 * p.difference) / p.lead;
}
