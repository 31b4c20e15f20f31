import type { Point } from '../../src/parts/part-views.js';
import type { Mesh } from '../../src/solid/mesh.js';

type Loops = readonly (readonly Point[])[];
type Place = readonly [number, number, number];

/** Whether a point lies in loops by the even-odd rule. */
export function insideLoops(loops: Loops, [x, y]: Point): boolean {
  let inside = false;
  for (const loop of loops) {
    for (let i = 0; i < loop.length; i++) {
      const [[x0, y0], [x1, y1]] = [loop[i]!, loop[(i + 1) % loop.length]!];
      if (y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) inside = !inside;
    }
  }
  return inside;
}

/** Off any corner of a mesh, mm. */
const ASIDE = [1.37e-5, 2.91e-5] as const;

/** Whether a point lies in a closed mesh: a line straight up from beside it meets facets an odd number of times. */
export function insideMesh({ positions: p, triangles: t }: Mesh, at: Place): boolean {
  const [x, y] = [at[0] + ASIDE[0], at[1] + ASIDE[1]];
  let crossings = 0;
  for (let i = 0; i < t.length; i += 3) {
    const [a, b, c] = [3 * t[i]!, 3 * t[i + 1]!, 3 * t[i + 2]!];
    const [ax, ay, bx, by, cx, cy] = [p[a]! - x, p[a + 1]! - y, p[b]! - x, p[b + 1]! - y, p[c]! - x, p[c + 1]! - y];
    if ((ax > 0 && bx > 0 && cx > 0) || (ax < 0 && bx < 0 && cx < 0)) continue;
    if ((ay > 0 && by > 0 && cy > 0) || (ay < 0 && by < 0 && cy < 0)) continue;
    const [u, v, w] = [bx * cy - by * cx, cx * ay - cy * ax, ax * by - ay * bx];
    if (!(u > 0 && v > 0 && w > 0) && !(u < 0 && v < 0 && w < 0)) continue;
    if ((u * p[a + 2]! + v * p[b + 2]! + w * p[c + 2]!) / (u + v + w) > at[2]) crossings++;
  }
  return crossings % 2 === 1;
}

function nearEdge(loops: Loops, [x, y]: Point, most: number): boolean {
  return loops.some((loop) =>
    loop.some(([x0, y0], i) => {
      const [x1, y1] = loop[(i + 1) % loop.length]!;
      const [ux, uy] = [x1 - x0, y1 - y0];
      const share = Math.min(1, Math.max(0, ((x - x0) * ux + (y - y0) * uy) / (ux * ux + uy * uy)));
      return Math.hypot(x - x0 - share * ux, y - y0 - share * uy) < most;
    }),
  );
}

/** Where a drawn section is to be compared with the solid. */
export interface SectionCheck {
  /** drawn material */
  readonly loops: Loops;
  /** one solid, or several whose material is drawn alike */
  readonly mesh: Mesh | readonly Mesh[];
  /** place in the mesh of a point of the drawing; undefined where the drawing follows a convention, as in a thread */
  readonly inMesh: (point: Point) => Place | undefined;
  readonly from: Point;
  readonly to: Point;
  /** points nearer to a drawn edge are left out [mm] */
  readonly edge?: number;
}

/** Points of a grid over a section at which drawing and solid disagree, and how many were tried. */
export function disagreements({ loops, mesh, inMesh, from, to, edge = 0.06 }: SectionCheck): {
  readonly tried: number;
  readonly wrong: readonly Point[];
} {
  const meshes = [mesh].flat();
  const steps = 34;
  const wrong: Point[] = [];
  let tried = 0;
  for (let i = 0; i <= steps; i++) {
    for (let k = 0; k <= steps; k++) {
      // off the grid by a little, so that no row lies in a plane of the part
      const at: Point = [
        from[0] + ((to[0] - from[0]) * (i + 0.137)) / (steps + 1),
        from[1] + ((to[1] - from[1]) * (k + 0.219)) / (steps + 1),
      ];
      const place = inMesh(at);
      if (!place || nearEdge(loops, at, edge)) continue;
      tried++;
      if (insideLoops(loops, at) !== meshes.some((mesh) => insideMesh(mesh, place))) wrong.push(at);
    }
  }
  return { tried, wrong };
}
