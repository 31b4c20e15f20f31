import { requirePositive } from '../units/require.js';

/**
 * Time of one move from rest to rest, with equal acceleration at both ends and no limit of jerk.
 *
 *     v²/a ≤ d:  t = d/v + v/a          else  t = 2·√(d/a), the feed √(a·d) is never passed
 *
 * @param p.distance      d  of the move                     [mm]     > 0
 * @param p.feed          v  feed that is set                [mm/s]   > 0
 * @param p.acceleration  a  at both ends                    [mm/s²]  > 0
 * @returns t [s]
 * @throws InputError a value is not above 0
 * @source derived: trapezoidal and triangular moves
 * @example travelTime({ distance: 0.4, feed: 3, acceleration: 100 }) // 0.1633
 */
export function travelTime(p: {
  readonly distance: number;
  readonly feed: number;
  readonly acceleration: number;
}): number {
  requirePositive('distance', p.distance);
  requirePositive('feed', p.feed);
  requirePositive('acceleration', p.acceleration);
  const { distance: d, feed: v, acceleration: a } = p;
  return (v * v) / a <= d ? d / v + v / a : 2 * Math.sqrt(d / a);
}
