import { fault } from '../units/faults.js';
import { type HalfPlane, sidesOf } from './convex.js';
import { flatEnd } from './flat-end.js';
import type { TaggedMesh } from './mesh.js';
import { type Outline, polygonArea } from './outline.js';

/** A level of a loft: the outline's sides moved out by `offset` (in, when negative) at height `z`, mm. */
export type LoftLevel = readonly [z: number, offset: number];

/**
 * A convex outline raised through several levels, its sides moved out or in at each: prisms with chamfers and fillets
 * on outlines of any convex shape. Corners stay where neighbouring sides meet, so every wall is flat.
 *
 * @param outline  convex, counter-clockwise                                        [mm]
 * @param levels   [z, offset] from bottom to top, at least two, z rising           [mm]
 * @returns a closed mesh; facets tagged by wall, side by side in each step upwards, then bottom and top
 * @throws InputError a level moves the sides in so far that nothing is left
 */
export function loftConvex(outline: Outline, levels: readonly LoftLevel[]): TaggedMesh {
  const rings = levels.map(([, offset]) => movedSides(outline, offset));
  const count = outline.length;
  const positions = new Float64Array(rings.length * count * 3);
  rings.forEach((ring, level) => {
    ring.forEach(([x, y], i) => {
      positions.set([x, y, levels[level]![0]], (level * count + i) * 3);
    });
  });
  const walls = rings.slice(1).flatMap((_, level) => wall(level * count, count));
  const steps = rings.length - 1;
  const [low, high] = [flatEnd(ringFrom(0, count)), flatEnd(ringFrom(steps * count, count))];
  const [bottom, top] = [low.map(([a, b, c]): [number, number, number] => [a, c, b]), high];
  const tags = [
    ...walls.map((_, i) => i >> 1),
    ...bottom.map(() => steps * count),
    ...top.map(() => steps * count + 1),
  ];
  return joined(positions, [...walls, ...bottom, ...top], tags);
}

/**
 * Volume of that loft: each layer is a prismatoid, so Simpson's rule on its ends and middle is exact.
 *
 *     V = Σ h/6·(A₀ + 4·A_m + A₁)
 *
 * @param outline  convex, counter-clockwise              [mm]
 * @param levels   as for the loft                        [mm]
 * @returns V [mm³]
 * @source geometry: prismatoid
 */
export function loftVolume(outline: Outline, levels: readonly LoftLevel[]): number {
  const rings = levels.map(([, offset]) => movedSides(outline, offset));
  let volume = 0;
  for (let i = 1; i < rings.length; i++) {
    const below = rings[i - 1]!;
    const above = rings[i]!;
    const middle = below.map(([x, y], k): [number, number] => [(x + above[k]![0]) / 2, (y + above[k]![1]) / 2]);
    const height = levels[i]![0] - levels[i - 1]![0];
    volume += (height / 6) * (polygonArea(below) + 4 * polygonArea(middle) + polygonArea(above));
  }
  return volume;
}

/**
 * The outline with each side moved out by `offset`. A short side between others may vanish when moved in; its corners
 * then fall together, so that the number and order of corners never change.
 */
export function movedSides(outline: Outline, offset: number): Outline {
  if (offset === 0) return outline;
  const sides = sidesOf(outline).map(([a, b, c]): HalfPlane => [a, b, c + offset]);
  const kept = offset > 0 ? sides.map((_, i) => i) : surviving(sides);
  if (kept.length < 3) throw fault('offset', offset, 'leaves nothing of the outline');
  const corners = new Map(kept.map((side, i) => [side, meeting(sides[kept.at(i - 1)!]!, sides[side]!)]));
  // corner i stands at the start of side i: where side i is gone, at the start of the next one that is left
  return outline.map((_, i) => corners.get(kept.find((side) => side >= i) ?? kept[0]!)!);
}

/** Indices of the sides that still bound something, after all sides were moved in. */
function surviving(sides: readonly HalfPlane[]): number[] {
  const kept = sides.map((_, i) => i);
  for (let i = 0, quiet = 0; quiet < kept.length && kept.length >= 3; ) {
    const [before, here, after] = [
      kept.at((i - 1) % kept.length)!,
      kept[i % kept.length]!,
      kept[(i + 1) % kept.length]!,
    ];
    const start = meeting(sides[before]!, sides[here]!);
    const end = meeting(sides[here]!, sides[after]!);
    const [a, b] = sides[here]!;
    if ((end[0] - start[0]) * -b + (end[1] - start[1]) * a > 0) {
      quiet++;
      i = (i + 1) % kept.length;
    } else {
      kept.splice(i % kept.length, 1);
      quiet = 0;
      i = (i + kept.length - 1) % Math.max(1, kept.length);
    }
  }
  return kept;
}

function meeting([a, b, c]: HalfPlane, [d, e, f]: HalfPlane): readonly [number, number] {
  const turn = a * e - b * d;
  return [(c * e - b * f) / turn, (a * f - c * d) / turn];
}

function wall(start: number, count: number): [number, number, number][] {
  return Array.from({ length: count }, (_, i) => {
    const next = (i + 1) % count;
    const [low, lowNext, high, highNext] = [start + i, start + next, start + count + i, start + count + next];
    return [
      [low, lowNext, highNext],
      [low, highNext, high],
    ] as [number, number, number][];
  }).flat();
}

function ringFrom(start: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => start + i);
}

/** Joins corners that stand at the same place, and drops facets that thereby lost their area. */
function joined(
  positions: Float64Array,
  facets: readonly [number, number, number][],
  tags: readonly number[],
): TaggedMesh {
  const points: number[] = [];
  const indexOf = new Map<string, number>();
  const same = Array.from({ length: positions.length / 3 }, (_, i) => {
    const point = positions.subarray(3 * i, 3 * i + 3);
    const key = point.join();
    const known = indexOf.get(key) ?? points.length / 3;
    if (!indexOf.has(key)) {
      indexOf.set(key, known);
      points.push(...point);
    }
    return known;
  });
  const triangles: number[] = [];
  const kept: number[] = [];
  facets.forEach((facet, i) => {
    const [a, b, c] = [same[facet[0]]!, same[facet[1]]!, same[facet[2]]!];
    if (a === b || b === c || c === a) return;
    triangles.push(a, b, c);
    kept.push(tags[i]!);
  });
  return {
    positions: Float64Array.from(points),
    triangles: Uint32Array.from(triangles),
    tags: Uint32Array.from(kept),
  };
}
