import { type Beside, besideScrews } from './beside-screws.js';

type Point = readonly [number, number];

/**
 * Share of a load along the axis that each screw of a pattern takes: a stiff plate on springs, which tilts where the
 * load does not pass through the middle of the pattern.
 *
 *     F_i/F = 1/n + d_i·S⁻¹·e        S = Σ d·dᵀ, d from the middle of the pattern, e where the load passes from there
 *
 * Screws in one line do not hold a load beside it: the part tips about its own edge beyond them, and all of them pull more.
 *
 *     F_i → F_i · r / (r − d)        d from the load to the line of the screws, r on that way to the edge
 *
 * @param centres  of the screws, from the line of the load  [mm]
 * @param edge     how far the part lies on its seat along a unit vector, from the line of the load [mm]
 * @returns a share for each; 0 for those that would be pushed, so that the sum may exceed 1; without bound where the part
 * ends at its screws [-]
 * @validity without an edge a load beside a line of screws counts along the line alone
 * @source derived: balance of force and moments
 * @example screwShares([[10, 0], [-30, 0]]) // [0.75, 0.25]
 * @example screwShares([[15, 9], [15, -9]], () => 22) // [1.57143, 1.57143]
 */
export function screwShares(centres: readonly Point[], edge?: (along: Point) => number): number[] {
  const count = centres.length;
  const mean = (axis: 0 | 1) => centres.reduce((sum, centre) => sum + centre[axis], 0) / count;
  const middle: Point = [mean(0), mean(1)];
  const arms = centres.map(([x, y]): Point => [x - middle[0], y - middle[1]]);
  const [a, b] = tiltOf(arms, [-middle[0], -middle[1]]);
  const tipped = edge ? pryingOf(besideScrews(centres), edge) : 1;
  return arms.map(([x, y]) => tipped * Math.max(0, 1 / count + a * x + b * y));
}

function pryingOf(beside: Beside | undefined, edge: (along: Point) => number): number {
  if (!beside) return 1;
  const reach = edge(beside.along);
  return reach > beside.distance ? reach / (reach - beside.distance) : Infinity;
}

/** Below this share of the larger spread, a pattern counts as one line. */
const IN_LINE = 1e-9;

/** The tilt S⁻¹·e; along the line alone where the pattern is one. */
function tiltOf(arms: readonly Point[], [ex, ey]: Point): Point {
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of arms) {
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  const trace = xx + yy;
  if (trace === 0) return [0, 0];
  const determinant = xx * yy - xy * xy;
  if (determinant > IN_LINE * trace * trace)
    return [(yy * ex - xy * ey) / determinant, (xx * ey - xy * ex) / determinant];
  return [(xx * ex + xy * ey) / trace ** 2, (xy * ex + yy * ey) / trace ** 2];
}
