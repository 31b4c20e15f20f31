import type { Mesh } from '../../src/solid/mesh.js';

export type Point = readonly [number, number];

/** Closed loops in which a mesh meets a horizontal plane, by facets alone. The plane must pass no vertex. */
export function sectionLoops({ positions: p, triangles }: Mesh, z: number): Point[][] {
  const next = new Map<string, { at: Point; to: string }>();
  for (let i = 0; i < triangles.length; i += 3) {
    const corners = [0, 1, 2].map((k) => 3 * triangles[i + k]!);
    const up: [string, Point][] = [];
    const down: [string, Point][] = [];
    for (let k = 0; k < 3; k++) {
      const [a, b] = [corners[k]!, corners[(k + 1) % 3]!];
      const [da, db] = [p[a + 2]! - z, p[b + 2]! - z];
      if (da < 0 === db < 0) continue;
      const share = da / (da - db);
      const at: Point = [p[a]! + share * (p[b]! - p[a]!), p[a + 1]! + share * (p[b + 1]! - p[a + 1]!)];
      const key = at.map((value) => value.toFixed(5)).join();
      (da < 0 ? up : down).push([key, at]);
    }
    if (up.length === 1 && down.length === 1 && up[0]![0] !== down[0]![0])
      next.set(down[0]![0], { at: down[0]![1], to: up[0]![0] });
  }
  const loops: Point[][] = [];
  while (next.size > 0) {
    const loop: Point[] = [];
    let key = next.keys().next().value!;
    for (let step = next.get(key); step; step = next.get(key)) {
      loop.push(step.at);
      next.delete(key);
      key = step.to;
    }
    loops.push(loop);
  }
  return loops;
}

/** Least distance between the sides of two loops. */
export function loopDistance(a: readonly Point[], b: readonly Point[]): number {
  const oneWay = (points: readonly Point[], loop: readonly Point[]) =>
    Math.min(...points.map((point) => pointDistance(point, loop)));
  return Math.min(oneWay(a, b), oneWay(b, a));
}

/** Distance of a point to the nearest side of a loop. */
export function pointDistance([x, y]: Point, loop: readonly Point[]): number {
  let nearest = Infinity;
  for (let i = 0; i < loop.length; i++) {
    const [[ax, ay], [bx, by]] = [loop[i]!, loop[(i + 1) % loop.length]!];
    const [ux, uy] = [bx - ax, by - ay];
    const share = Math.min(1, Math.max(0, ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy)));
    nearest = Math.min(nearest, Math.hypot(x - ax - share * ux, y - ay - share * uy));
  }
  return nearest;
}
