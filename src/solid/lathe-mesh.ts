import { fault } from '../units/faults.js';
import { requireWhole } from '../units/require.js';
import { cosd, sind, unitAt } from './angles.js';
import { flatEnd } from './flat-end.js';
import type { TaggedMesh } from './mesh.js';
import { cornerRadius } from './outline.js';
import type { Lathe } from './recipe.js';

/**
 * The closed mesh of a lathe shape: one ring of corners for each contour point, flat ends without more corners.
 *
 * @param lathe  sides and contour  [mm, degrees]
 * @returns a closed mesh, outward facets tagged by side, piece by piece upwards, then bottom and top  [mm]
 * @throws InputError  fewer than 3 sides or 2 points, a repeated point, or a radius of 0 between the ends
 * @example latheMesh({ kind: 'lathe', sides: 4, circumscribed: false, contour: [[1, 0], [1, 2]] }).triangles.length / 3 // 12
 */
export function latheMesh(lathe: Lathe): TaggedMesh {
  requireLathe(lathe);
  const { sides, contour } = lathe;
  const positions: number[] = [];
  const triangles: number[] = [];
  const rings = contour.map(([radius, z]) => ringOf(lathe, radius, z, positions));
  const tags: number[] = [];
  for (let i = 1; i < rings.length; i++) {
    wall(rings[i - 1]!, rings[i]!, sides, triangles);
    const each = rings[i - 1]!.length > 1 && rings[i]!.length > 1 ? 2 : 1;
    for (let side = 0; side < each * sides; side++) tags.push((i - 1) * sides + Math.floor(side / each));
  }
  const ends = (rings.length - 1) * sides;
  for (const [a, b, c] of flatEnd(rings[0]!)) {
    triangles.push(a, c, b);
    tags.push(ends);
  }
  for (const [a, b, c] of flatEnd(rings.at(-1)!)) {
    triangles.push(a, b, c);
    tags.push(ends + 1);
  }
  return {
    positions: new Float64Array(positions),
    triangles: new Uint32Array(triangles),
    tags: new Uint32Array(tags),
  };
}

/** Corners of one contour point, added to the positions: a ring, or a single corner on the axis. */
function ringOf({ sides, circumscribed, turn = 0 }: Lathe, radius: number, z: number, positions: number[]): number[] {
  const first = positions.length / 3;
  if (radius === 0) {
    positions.push(0, 0, z);
    return [first];
  }
  const reach = cornerRadius(radius, sides, circumscribed);
  const [c, s] = [cosd(turn), sind(turn)];
  return Array.from({ length: sides }, (_, i) => {
    const [x, y] = unitAt(i, sides);
    positions.push(reach * (c * x - s * y), reach * (s * x + c * y), z);
    return first + i;
  });
}

function wall(low: readonly number[], high: readonly number[], sides: number, triangles: number[]): void {
  for (let i = 0; i < sides; i++) {
    const j = (i + 1) % sides;
    if (low.length > 1) triangles.push(low[i]!, low[j]!, high[j % high.length]!);
    if (high.length > 1) triangles.push(low[i % low.length]!, high[j]!, high[i]!);
  }
}

function requireLathe({ sides, contour }: Lathe): void {
  requireWhole('sides', sides, 3, 100_000);
  if (contour.length < 2) throw fault('contour', contour.length, 'must have at least 2 points');
  for (const [i, [radius, z]] of contour.entries()) {
    const inner = i > 0 && i + 1 < contour.length;
    if (!Number.isFinite(z) || !(inner ? radius > 0 : radius >= 0) || !Number.isFinite(radius)) {
      throw fault(`contour.${i}`, [radius, z], 'must have a radius above 0, or 0 at the ends');
    }
    const before = contour[i - 1];
    if (before !== undefined && before[0] === radius && before[1] === z) {
      throw fault(`contour.${i}`, [radius, z], 'must differ from the point before it');
    }
  }
}
