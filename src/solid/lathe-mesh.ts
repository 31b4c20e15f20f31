import { fault } from '../units/faults.js';
import { requireWhole } from '../units/require.js';
import { cosd, sind, unitAt } from './angles.js';
import type { Mesh } from './mesh.js';
import { cornerRadius } from './outline.js';
import type { Lathe } from './recipe.js';

/**
 * The closed mesh of a lathe shape: one ring of corners for each profile point, a corner on the axis for each end.
 *
 * @param lathe  sides and profile  [mm, degrees]
 * @returns a closed mesh, outward facets  [mm]
 * @throws InputError  fewer than 3 sides or 2 points, a repeated point, or a radius of 0 between the ends
 * @example latheMesh({ kind: 'lathe', sides: 4, circumscribed: false, profile: [[1, 0], [1, 2]] }).triangles.length / 3 // 16
 */
export function latheMesh(lathe: Lathe): Mesh {
  requireLathe(lathe);
  const { sides, profile } = lathe;
  const rings = profile.filter(([radius]) => radius > 0);
  const positions = new Float64Array(3 * (rings.length * sides + 2));
  const [c, s] = [cosd(lathe.turn ?? 0), sind(lathe.turn ?? 0)];
  let at = 0;
  for (const [radius, z] of rings) {
    const reach = cornerRadius(radius, sides, lathe.circumscribed);
    for (let i = 0; i < sides; i++) {
      const [x, y] = unitAt(i, sides);
      positions[at++] = reach * (c * x - s * y);
      positions[at++] = reach * (s * x + c * y);
      positions[at++] = z;
    }
  }
  positions[at + 2] = profile[0]![1];
  positions[at + 5] = profile.at(-1)![1];
  return { positions, triangles: latheTriangles(sides, rings.length) };
}

function latheTriangles(sides: number, rings: number): Uint32Array {
  const triangles = new Uint32Array(6 * sides * rings);
  const bottom = rings * sides;
  let at = 0;
  for (let i = 0; i < sides; i++) {
    const j = (i + 1) % sides;
    at = put(triangles, at, bottom, j, i);
    for (let ring = 0; ring + 1 < rings; ring++) {
      const [low, high] = [ring * sides, (ring + 1) * sides];
      at = put(triangles, at, low + i, low + j, high + j);
      at = put(triangles, at, low + i, high + j, high + i);
    }
    const top = (rings - 1) * sides;
    at = put(triangles, at, bottom + 1, top + i, top + j);
  }
  return triangles;
}

function put(triangles: Uint32Array, at: number, a: number, b: number, c: number): number {
  triangles[at] = a;
  triangles[at + 1] = b;
  triangles[at + 2] = c;
  return at + 3;
}

function requireLathe({ sides, profile }: Lathe): void {
  requireWhole('sides', sides, 3, 100_000);
  if (profile.length < 2) throw fault('profile', profile.length, 'must have at least 2 points');
  for (const [i, [radius, z]] of profile.entries()) {
    const inner = i > 0 && i + 1 < profile.length;
    if (!Number.isFinite(z) || !(inner ? radius > 0 : radius >= 0) || !Number.isFinite(radius)) {
      throw fault(`profile.${i}`, [radius, z], 'must have a radius above 0, or 0 at the ends');
    }
    const before = profile[i - 1];
    if (before !== undefined && before[0] === radius && before[1] === z) {
      throw fault(`profile.${i}`, [radius, z], 'must differ from the point before it');
    }
  }
}
