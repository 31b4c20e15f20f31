import { requirePositive, requireRange } from '../../units/require.js';

/**
 * How a bore changes when its part takes up moisture. A free ring grows as a whole, and its bore opens; a ring that a
 * metal pocket holds can only grow inwards, by twice its wall.
 *
 *     free  ΔD = g·D          held  ΔD = −2·g·b
 *
 * @param p.growth    g  linear growth from dry to room air     [-]   0 to 0.05
 * @param p.diameter  D  diameter of the bore                   [mm]  > 0
 * @param p.wall      b  radial wall of the ring                [mm]  > 0
 * @param p.held         whether a metal pocket keeps the outside from growing
 * @returns ΔD, diametral; negative where the bore closes [mm]
 * @throws InputError  a value is outside its range
 * @validity the held ring takes the growth up without bulging lengthwise
 * @source common-practice: polyamides after conditioning
 * @example moistureGrowth({ growth: 0.008, diameter: 8, wall: 5, held: true }) // -0.08
 */
export function moistureGrowth(p: {
  readonly growth: number;
  readonly diameter: number;
  readonly wall: number;
  readonly held: boolean;
}): number {
  requireRange('growth', p.growth, 0, 0.05);
  requirePositive('diameter', p.diameter);
  requirePositive('wall', p.wall);
  return p.held ? -2 * p.growth * p.wall : p.growth * p.diameter;
}
