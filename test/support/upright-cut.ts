import type { Mesh } from '../../src/solid/mesh.js';

/** What an upright cut of a solid measures. */
export interface UprightCut {
  readonly area: number;
  /** about the level axis through its middle */
  readonly inertia: number;
  readonly modulus: number;
}

/**
 * Cuts a closed mesh with the upright plane whose points have this distance from the axis along a direction, and
 * integrates the section: every facet gives one side of it, and Green's theorem takes the sides in any order.
 */
export function uprightCut(
  { positions: p, triangles }: Mesh,
  along: readonly [number, number],
  distance: number,
): UprightCut {
  let [area, first, second] = [0, 0, 0];
  let [low, high] = [Infinity, -Infinity];
  for (let i = 0; i < triangles.length; i += 3) {
    const corners = [0, 1, 2].map((k) => {
      const at = 3 * triangles[i + k]!;
      const [x, y, z] = [p[at]!, p[at + 1]!, p[at + 2]!];
      return { off: x * along[0] + y * along[1] - distance, t: y * along[0] - x * along[1], z };
    });
    let up: readonly [number, number] | undefined;
    let down: readonly [number, number] | undefined;
    for (let k = 0; k < 3; k++) {
      const [a, b] = [corners[k]!, corners[(k + 1) % 3]!];
      if (a.off < 0 === b.off < 0) continue;
      const share = a.off / (a.off - b.off);
      const point = [a.t + share * (b.t - a.t), a.z + share * (b.z - a.z)] as const;
      if (a.off < 0) up = point;
      else down = point;
    }
    if (!up || !down) continue;
    const [[t1, z1], [t2, z2]] = [down, up];
    area += ((t2 + t1) / 2) * (z2 - z1);
    // moments of the strip between the side and t = 0
    first += ((z2 - z1) * (t1 * (2 * z1 + z2) + t2 * (z1 + 2 * z2))) / 6;
    second +=
      ((z2 - z1) * (t1 * (3 * z1 ** 2 + 2 * z1 * z2 + z2 ** 2) + t2 * (z1 ** 2 + 2 * z1 * z2 + 3 * z2 ** 2))) / 12;
    low = Math.min(low, z1, z2);
    high = Math.max(high, z1, z2);
  }
  const sign = Math.sign(area);
  const middle = first / area;
  const inertia = sign * (second - area * middle ** 2);
  return { area: Math.abs(area), inertia, modulus: inertia / Math.max(high - middle, middle - low) };
}
