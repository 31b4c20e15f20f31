import { requirePositive, requireWhole } from '../../units/require.js';

/**
 * How far a circle that is drawn around its facets (a bore) opens beyond its radius at the corners, on the diameter.
 * In the middle of each facet nothing is added, so a clearance is never eaten.
 *
 *     e = D·(1/cos(π/n) − 1)
 *
 * @param p.diameter  D  diameter that is meant     [mm]  > 0
 * @param p.sides     n  facets around the circle   [-]   3 to 10000
 * @returns e, diametral, at the corners [mm]
 * @throws InputError  a value is outside its range
 * @source derived: circumscribed polygon
 * @example facetOpening({ diameter: 8, sides: 10 }) // 0.4117
 */
export function facetOpening(p: { readonly diameter: number; readonly sides: number }): number {
  requirePositive('diameter', p.diameter);
  requireWhole('sides', p.sides, 3, 10_000);
  return p.diameter * (1 / Math.cos(Math.PI / p.sides) - 1);
}
