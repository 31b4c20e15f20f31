import { requireNotNegative, requirePositive } from '../units/require.js';
import { degrees } from './angle.js';

/**
 * How far a floating nut may turn before its screws stop it, each way.
 *
 *     θ = f / R
 *
 * @param p.float   f, sideways float of the screws in their holes, each way  [mm, ≥ 0]
 * @param p.radius  R, distance of the screws from the axis                   [mm, > 0]
 * @returns angle each way [degrees]
 * @throws InputError a value is not a number or out of range
 * @source derived: arc over radius
 * @example floatTurn({ float: 0.3, radius: 8 }) // 2.149°
 */
export function floatTurn({ float, radius }: { readonly float: number; readonly radius: number }): number {
  requireNotNegative('float', float);
  requirePositive('radius', radius);
  return degrees(float / radius);
}

/**
 * Travel that is lost while a floating nut turns from one stop to the other.
 *
 *     s = P_h · 2 θ / 360 = P_h · 2 f / (2 π R)
 *
 * @param p.lead    P_h, travel per turn                                      [mm, > 0]
 * @param p.float   f, sideways float of the screws in their holes, each way  [mm, ≥ 0]
 * @param p.radius  R, distance of the screws from the axis                   [mm, > 0]
 * @returns lost travel [mm]
 * @throws InputError a value is not a number or out of range
 * @source derived: the helix
 * @example turnBacklash({ lead: 2, float: 0.3, radius: 8 }) // 0.0239 mm
 */
export function turnBacklash(p: { readonly lead: number; readonly float: number; readonly radius: number }): number {
  requirePositive('lead', p.lead);
  return (p.lead * 2 * floatTurn(p)) / 360;
}
