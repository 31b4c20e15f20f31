type Point = readonly [number, number];

/**
 * Share of a load along the axis that each screw of a pattern takes: a stiff plate on springs, which tilts where the
 * load does not pass through the middle of the pattern.
 *
 *     F_i/F = 1/n + d_i·S⁻¹·e        S = Σ d·dᵀ, d from the middle of the pattern, e where the load passes from there
 *
 * @param centres  of the screws, from the line of the load  [mm]
 * @returns a share for each; 0 for those that would be pushed, so that the sum may exceed 1 [-]
 * @validity a pattern in one line does not hold a load beside that line; what it does along the line counts
 * @source derived: balance of force and moments
 * @example screwShares([[10, 0], [-30, 0]]) // [0.75, 0.25]
 */
export function screwShares(centres: readonly Point[]): number[] {
  const count = centres.length;
  const mean = (axis: 0 | 1) => centres.reduce((sum, centre) => sum + centre[axis], 0) / count;
  const middle: Point = [mean(0), mean(1)];
  const arms = centres.map(([x, y]): Point => [x - middle[0], y - middle[1]]);
  const [a, b] = tiltOf(arms, [-middle[0], -middle[1]]);
  return arms.map(([x, y]) => Math.max(0, 1 / count + a * x + b * y));
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
