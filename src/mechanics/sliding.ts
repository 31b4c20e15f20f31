import { requireNotNegative } from '../units/require.js';
import { radians } from './angle.js';
import { leadAngle } from './power-screw/lead-angle.js';

/** Sliding speed above which no printed nut is run [mm/s]; dry prints were tested at 200 to 1000. @source common-practice */
export const PLASTIC_NUT_SPEED = 500;

/**
 * How far the flanks slide on each other for a millimetre of travel.
 *
 *     r = 1 / sin λ      λ = atan(l / (π·dm))
 *
 * @param p.lead          l   travel per turn     [mm]  > 0
 * @param p.meanDiameter  dm  pitch diameter      [mm]  > 0
 * @returns r [mm/mm], above 1
 * @throws InputError  a value is not above 0
 * @source derived: unrolled helix
 * @example slidingPerTravel({ lead: 2, meanDiameter: 7 }) // 11.04
 */
export function slidingPerTravel(p: { readonly lead: number; readonly meanDiameter: number }): number {
  return 1 / Math.sin(radians(leadAngle(p)));
}

/**
 * Speed at which the flanks slide on each other.
 *
 *     vs = v / sin λ
 *
 * @param p.feed          v   travel speed        [mm/s]  0 or above
 * @param p.lead          l   travel per turn     [mm]    > 0
 * @param p.meanDiameter  dm  pitch diameter      [mm]    > 0
 * @returns vs [mm/s]
 * @throws InputError  a value is outside its range
 * @source derived: unrolled helix
 * @example slidingSpeed({ feed: 10, lead: 2, meanDiameter: 7 }) // 110.4
 */
export function slidingSpeed(p: {
  readonly feed: number;
  readonly lead: number;
  readonly meanDiameter: number;
}): number {
  requireNotNegative('feed', p.feed);
  return p.feed * slidingPerTravel(p);
}
