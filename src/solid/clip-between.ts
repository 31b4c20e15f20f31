import type { Mesh } from './mesh.js';
import { between, polygonCutter } from './polygon-cutter.js';

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
  const points = snapped(surface.positions, [from, to]);
  const overFrom = above(points, from, 1);
  const underTo = above(points, to, -1);
  const triangles: number[] = [];
  for (let i = 0; i < surface.triangles.length; i += 3) {
    const a = surface.triangles[i]!;
    const b = surface.triangles[i + 1]!;
    const c = surface.triangles[i + 2]!;
    if (isInside(points, a, from, to) && isInside(points, b, from, to) && isInside(points, c, from, to)) {
      triangles.push(a, b, c);
      continue;
    }
    const polygon = underTo(overFrom([a, b, c]));
    for (let k = 2; k < polygon.length; k++) triangles.push(polygon[0]!, polygon[k - 1]!, polygon[k]!);
  }
  const ends = [from, to].map((plane) => fan(points, triangles, plane));
  for (const end of ends) for (const corner of end) triangles.push(corner);
  return compact(points, triangles);
}

/** Corners with those next to a plane put onto it. */
function snapped(positions: Float64Array, planes: readonly number[]): number[] {
  const points: number[] = [];
  for (let i = 0; i < positions.length; i++) points.push(positions[i]!);
  for (let i = 2; i < points.length; i += 3) {
    for (const plane of planes) if (Math.abs(points[i]! - plane) < ON_PLANE) points[i] = plane;
  }
  return points;
}

/** Whether a corner lies between the planes, and on neither: most facets need no cutting. */
function isInside(points: readonly number[], corner: number, from: number, to: number): boolean {
  const z = points[3 * corner + 2]!;
  return z > from && z < to;
}

/** Keeps the part of a polygon on the far side of a plane. */
function above(points: number[], plane: number, side: 1 | -1): (polygon: readonly number[]) => readonly number[] {
  const heightOf = (corner: number) => side * (points[3 * corner + 2]! - plane);
  return polygonCutter(heightOf, (a, b, share) => {
    points.push(between(points, 0, a, b, share), between(points, 1, a, b, share), plane);
    return points.length / 3 - 1;
  });
}

/** Facets from the surface's edges on a plane to the axis. */
function fan(points: number[], triangles: readonly number[], plane: number): number[] {
  const center = points.length / 3;
  points.push(0, 0, plane);
  const made: number[] = [];
  for (let i = 0; i < triangles.length; i++) {
    const a = triangles[i]!;
    if (points[3 * a + 2] !== plane) continue;
    const b = triangles[i % 3 === 2 ? i - 2 : i + 1]!;
    if (points[3 * b + 2] === plane) made.push(b, a, center);
  }
  return made;
}

/** The mesh of the used corners only, in order of their first use. */
function compact(points: readonly number[], triangles: readonly number[]): Mesh {
  const names = new Int32Array(points.length / 3).fill(-1);
  const positions = new Float64Array(points.length);
  const renamed = new Uint32Array(triangles.length);
  let count = 0;
  for (let i = 0; i < triangles.length; i++) {
    const corner = triangles[i]!;
    if (names[corner]! < 0) {
      for (let axis = 0; axis < 3; axis++) positions[3 * count + axis] = points[3 * corner + axis]!;
      names[corner] = count++;
    }
    renamed[i] = names[corner]!;
  }
  return { positions: positions.slice(0, 3 * count), triangles: renamed };
}
