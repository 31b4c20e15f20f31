import { requireNotNegative } from '../../units/require.js';
import { screwShares } from './screw-shares.js';

type Point = readonly [number, number];

/** Ways round the axis that a lever is tried on; between them a share is at most 1 % more. */
const WAYS = 24;

/**
 * Shares of a load that the screws of a pattern take, where it acts beside the axis on a way that nobody told: `screwShares` of a load that
 * passes there, for every way round.
 *
 *     F_i/F = 1/n + d_i·S⁻¹·(e + l·u)        u round the axis
 *
 * @param centres  of the screws, from the axis  [mm]
 * @param lever    l  from the axis to the load  [mm]  0 or above
 * @param edge     how far the part lies on its seat along a unit vector, from the axis [mm]
 * @returns shares as of `screwShares`, a row for each way; one row where the load acts on the axis [-]
 * @throws InputError  the lever is outside its range
 * @source derived: balance of force and moments
 * @example leverShares([[17, 17], [17, -17], [-17, 17], [-17, -17]], 34)[0] // [0.75, 0.75, 0, 0]
 */
export function leverShares(
  centres: readonly Point[],
  lever: number,
  edge?: (along: Point) => number,
): readonly (readonly number[])[] {
  requireNotNegative('lever', lever);
  if (lever === 0) return [screwShares(centres, edge)];
  return Array.from({ length: WAYS }, (_, i) => {
    const angle = (2 * Math.PI * i) / WAYS;
    const [x, y] = [lever * Math.cos(angle), lever * Math.sin(angle)];
    return screwShares(
      centres.map(([u, v]): Point => [u - x, v - y]),
      edge && (([u, v]) => edge([u, v]) - x * u - y * v),
    );
  });
}

/**
 * The most that any screw of a pattern takes of a load beside the axis, on whichever way round it acts.
 *
 *     max F_i/F        F_i/F as of `leverShares`
 *
 * @param centres  of the screws, from the axis  [mm]
 * @param lever    l  from the axis to the load  [mm]  0 or above
 * @param edge     how far the part lies on its seat along a unit vector, from the axis [mm]
 * @returns the largest share [-]
 * @throws InputError  the lever is outside its range
 * @source derived: balance of force and moments
 * @example mostShare([[24, 0], [0, 24], [-24, 0], [0, -24]], 40) // 1.0833
 */
export function mostShare(centres: readonly Point[], lever: number, edge?: (along: Point) => number): number {
  return Math.max(...leverShares(centres, lever, edge).flat());
}
