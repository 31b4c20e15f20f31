import type { Mesh } from '../../src/solid/mesh.js';
import { seededUniform } from './seeded.js';

type Vector = [number, number, number];

/** A facet by its corners, as a reader of a file holds it. */
interface Triangle {
  readonly corners: readonly [Vector, Vector, Vector];
  readonly normal: Vector;
  readonly area: number;
}

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** All facets of a mesh, one by one: it shares no code with the tree of boxes that walls are measured by. */
export function trianglesOf({ positions: p, triangles: t }: Mesh): Triangle[] {
  return Array.from({ length: t.length / 3 }, (_, facet) => {
    const corners = [0, 1, 2].map((i) => {
      const at = 3 * t[3 * facet + i]!;
      return [p[at]!, p[at + 1]!, p[at + 2]!];
    }) as [Vector, Vector, Vector];
    const twice = cross(minus(corners[1], corners[0]), minus(corners[2], corners[0]));
    const length = Math.hypot(...twice);
    return { corners, normal: twice.map((x) => x / length) as Vector, area: length / 2 };
  });
}

/** Where a ray meets the plane of a facet inside it: by areas, each facet asked. */
function firstHit(triangles: readonly Triangle[], from: Vector, along: Vector) {
  let best: { distance: number; normal: Vector } | undefined;
  for (const { corners, normal } of triangles) {
    const against = dot(normal, along);
    if (Math.abs(against) < 1e-12) continue;
    const distance = dot(normal, minus(corners[0], from)) / against;
    if (distance < 1e-4 || distance >= (best?.distance ?? Infinity)) continue;
    const at: Vector = [from[0] + distance * along[0], from[1] + distance * along[1], from[2] + distance * along[2]];
    const inside = corners.every((corner, i) => {
      const next = corners[(i + 1) % 3]!;
      return dot(cross(minus(next, corner), minus(at, corner)), normal) >= -1e-9;
    });
    if (inside) best = { distance, normal };
  }
  return best;
}

/**
 * The least thickness met by rays from random places of the surface, against the normal there, to a face that looks
 * apart within 40°. Places are chosen by area, from facets that are asked for.
 */
export function thinnestByRays(
  mesh: Mesh,
  options: { readonly rays: number; readonly seed: number; readonly wanted?: (at: Vector, normal: Vector) => boolean },
): number {
  const triangles = trianglesOf(mesh);
  const random = seededUniform(options.seed);
  const areas: number[] = [];
  let total = 0;
  for (const { area } of triangles) {
    total += area;
    areas.push(total);
  }
  let least = Infinity;
  for (let i = 0; i < options.rays; i++) {
    const place = random() * total;
    const { corners, normal } = triangles[areas.findIndex((area) => area >= place)]!;
    const [u, v] = [Math.sqrt(random()), random()];
    const at = [0, 1, 2].map(
      (axis) => (1 - u) * corners[0][axis]! + u * (1 - v) * corners[1][axis]! + u * v * corners[2][axis]!,
    ) as Vector;
    if (options.wanted && !options.wanted(at, normal)) continue;
    const hit = firstHit(triangles, at, [-normal[0], -normal[1], -normal[2]]);
    if (hit && -dot(hit.normal, normal) > Math.cos((40 * Math.PI) / 180)) least = Math.min(least, hit.distance);
  }
  return least;
}

/**
 * Area, seen from below, of surfaces that look down by more than 45° from the vertical and do not lie on the bed: rays
 * straight up through a square grid, each asked of every facet.
 *
 * @param up   +1 as modelled, −1 turned over
 * @param step of the grid [mm]
 */
export function ceilingByRays(
  mesh: Mesh,
  {
    up,
    step,
    wanted = () => true,
  }: { readonly up: 1 | -1; readonly step: number; readonly wanted?: (at: Vector) => boolean },
): number {
  const triangles = trianglesOf(mesh);
  const bed = Math.min(...triangles.flatMap(({ corners }) => corners.map((corner) => up * corner[2])));
  let cells = 0;
  for (const { corners, normal } of triangles) {
    if (up * normal[2] > -Math.sin(Math.PI / 4) - 0.01) continue;
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    for (let i = Math.ceil(Math.min(...xs) / step); i * step <= Math.max(...xs); i++) {
      for (let j = Math.ceil(Math.min(...ys) / step); j * step <= Math.max(...ys); j++) {
        const hit = firstHit([{ corners, normal, area: 0 }], [i * step, j * step, -1e4], [0, 0, 1]);
        if (!hit) continue;
        const z = hit.distance - 1e4;
        if (up * z - bed > 0.05 && wanted([i * step, j * step, z])) cells++;
      }
    }
  }
  return cells * step * step;
}
