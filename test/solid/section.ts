import type { Mesh } from '../../src/solid/mesh.js';

/**
 * Distance from the axis to a mesh along a horizontal ray, by ray and facet alone; the farthest hit, 0 for none.
 * Independent of how the mesh was made.
 */
export function radiusAt(mesh: Mesh, angle: number, z: number): number {
  const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const { positions: p, triangles } = mesh;
  let farthest = 0;
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, d] = [3 * triangles[i]!, 3 * triangles[i + 1]!, 3 * triangles[i + 2]!];
    const heights = [p[a + 2]! - z, p[b + 2]! - z, p[d + 2]! - z] as const;
    if (Math.min(...heights) > 0 || Math.max(...heights) < 0) continue;
    // edge vectors, and the plane's crossing with the ray (0, 0, z) + t·(c, s, 0)
    const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
    const [vx, vy, vz] = [p[d]! - p[a]!, p[d + 1]! - p[a + 1]!, p[d + 2]! - p[a + 2]!];
    const [hx, hy, hz] = [s * vz, -c * vz, c * vy - s * vx];
    const determinant = ux * hx + uy * hy + uz * hz;
    if (Math.abs(determinant) < 1e-14) continue;
    const [ox, oy, oz] = [-p[a]!, -p[a + 1]!, z - p[a + 2]!];
    const first = (ox * hx + oy * hy + oz * hz) / determinant;
    const [qx, qy, qz] = [oy * uz - oz * uy, oz * ux - ox * uz, ox * uy - oy * ux];
    const second = (c * qx + s * qy) / determinant;
    if (first < -1e-9 || second < -1e-9 || first + second > 1 + 1e-9) continue;
    farthest = Math.max(farthest, (vx * qx + vy * qy + vz * qz) / determinant);
  }
  return farthest;
}

/** Heights at which the surface rises outwards through a radius along a line parallel to the axis, by bisection. */
export function risingCrossings(mesh: Mesh, angle: number, radius: number, from: number, to: number): number[] {
  return crossings(mesh, angle, radius, from, to, 1);
}

/** Heights at which the surface falls inwards through a radius. */
export function fallingCrossings(mesh: Mesh, angle: number, radius: number, from: number, to: number): number[] {
  return crossings(mesh, angle, radius, from, to, -1);
}

function crossings(mesh: Mesh, angle: number, radius: number, from: number, to: number, sign: 1 | -1): number[] {
  const steps = 120;
  const value = (z: number) => sign * (radiusAt(mesh, angle, z) - radius);
  const found: number[] = [];
  let low = from;
  for (let i = 1; i <= steps; i++) {
    const high = from + ((to - from) * i) / steps;
    if (value(low) < 0 && value(high) >= 0) {
      let [a, b] = [low, high];
      for (let k = 0; k < 40; k++) {
        const middle = (a + b) / 2;
        if (value(middle) < 0) a = middle;
        else b = middle;
      }
      found.push((a + b) / 2);
    }
    low = high;
  }
  return found;
}
