import type { Mesh } from './mesh.js';

/** Corners closer to a plane than this are taken to lie on it, mm. */
const ON_PLANE = 1e-6;

/**
 * Cuts an open surface around the axis flat at two heights and closes both ends by fans to the axis. Every horizontal
 * section of the surface must be a star about the axis, as a thread's is.
 *
 * @param surface  outward facets; open only above `to` and below `from`  [mm]
 * @param from     lower plane  [mm]
 * @param to       upper plane  [mm]
 * @returns a closed mesh of the used corners only  [mm]
 */
export function clipBetween(surface: Mesh, from: number, to: number): Mesh {
  const points = Array.from(surface.positions);
  for (let i = 2; i < points.length; i += 3) {
    if (Math.abs(points[i]! - from) < ON_PLANE) points[i] = from;
    if (Math.abs(points[i]! - to) < ON_PLANE) points[i] = to;
  }
  const above = cutter(points, from, 1);
  const below = cutter(points, to, -1);
  const triangles: number[] = [];
  for (let i = 0; i < surface.triangles.length; i += 3) {
    const [a, b, c] = [surface.triangles[i]!, surface.triangles[i + 1]!, surface.triangles[i + 2]!];
    const polygon = below(above([a, b, c]));
    for (let k = 2; k < polygon.length; k++) triangles.push(polygon[0]!, polygon[k - 1]!, polygon[k]!);
  }
  const closed = [...triangles, ...fan(points, triangles, from), ...fan(points, triangles, to)];
  return compact(points, closed);
}

/** Keeps the part of a polygon on the far side of a plane; a cut edge gets one corner, whichever facet asks first. */
function cutter(points: number[], plane: number, side: 1 | -1): (polygon: readonly number[]) => readonly number[] {
  const cuts = new Map<number, number>();
  const height = (corner: number) => side * (points[3 * corner + 2]! - plane);
  const cut = (a: number, b: number): number => {
    const [low, high] = a < b ? [a, b] : [b, a];
    const key = low * 2 ** 26 + high;
    const known = cuts.get(key);
    if (known !== undefined) return known;
    const share = height(low) / (height(low) - height(high));
    const along = (axis: number) => {
      const start = points[3 * low + axis]!;
      return start + share * (points[3 * high + axis]! - start);
    };
    const made = points.length / 3;
    points.push(along(0), along(1), plane);
    cuts.set(key, made);
    return made;
  };
  return (polygon) => {
    if (polygon.every((corner) => height(corner) >= 0)) return flatten(polygon, height);
    const kept: number[] = [];
    for (const [i, corner] of polygon.entries()) {
      const next = polygon[(i + 1) % polygon.length]!;
      const [here, there] = [height(corner), height(next)];
      if (here >= 0) kept.push(corner);
      if ((here > 0 && there < 0) || (here < 0 && there > 0)) kept.push(cut(corner, next));
    }
    return flatten(kept, height);
  };
}

/** Nothing, where a polygon has shrunk to a corner or an edge on the plane. */
function flatten(polygon: readonly number[], height: (corner: number) => number): readonly number[] {
  return polygon.length >= 3 && polygon.some((corner) => height(corner) > 0) ? polygon : [];
}

/** Facets from the surface's edges on a plane to the axis. */
function fan(points: number[], triangles: readonly number[], plane: number): number[] {
  const center = points.length / 3;
  points.push(0, 0, plane);
  const made: number[] = [];
  for (let i = 0; i < triangles.length; i++) {
    const [a, b] = [triangles[i]!, triangles[i % 3 === 2 ? i - 2 : i + 1]!];
    if (points[3 * a + 2] === plane && points[3 * b + 2] === plane) made.push(b, a, center);
  }
  return made;
}

function compact(points: readonly number[], triangles: readonly number[]): Mesh {
  const names = new Int32Array(points.length / 3).fill(-1);
  const positions: number[] = [];
  const renamed = new Uint32Array(triangles.length);
  for (const [i, corner] of triangles.entries()) {
    if (names[corner] === -1) {
      names[corner] = positions.length / 3;
      positions.push(points[3 * corner]!, points[3 * corner + 1]!, points[3 * corner + 2]!);
    }
    renamed[i] = names[corner]!;
  }
  return { positions: Float64Array.from(positions), triangles: renamed };
}
