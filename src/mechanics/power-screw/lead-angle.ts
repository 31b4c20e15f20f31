import { requirePositive } from '../../units/require.js';
import { degrees } from '../angle.js';

/**
 * Lead angle of a helix at a stated diameter; for a screw's own figure give its pitch diameter.
 *
 *     λ = atan(l / (π·d))
 *
 * @param p.lead          l  travel per turn = pitch × starts          [mm]  > 0
 * @param p.meanDiameter  d  diameter at which the angle is wanted     [mm]  > 0
 * @returns λ against the plane across the axis [degrees], 0 to 90
 * @throws InputError  a value is not above 0
 * @source iso-2901: geometry of a helix
 * @example leadAngle({ lead: 8, meanDiameter: 7 }) // 19.991
 */
export function leadAngle(p: { readonly lead: number; readonly meanDiameter: number }): number {
  requirePositive('lead', p.lead);
  requirePositive('meanDiameter', p.meanDiameter);
  return degrees(Math.atan(p.lead / (Math.PI * p.meanDiameter)));
}
