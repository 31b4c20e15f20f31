import type { Mesh } from './mesh.js';
import type { PlaneWork } from './prism-mesh.js';
import type { Shape } from './recipe.js';
import { stitched } from './stitch-bore.js';
import { boresOf } from './upright-bores.js';
import { UprightMesh } from './upright-mesh.js';
import { type Span, type UprightPlan, uprightPlan } from './upright-plan.js';

/**
 * A body of upright prisms and threaded bores whose outlines, seen from above, neither cross nor touch: a plate with
 * what stands on it and is bored through. Outlines part the plane into cells, each with its own heights of solid; walls
 * stand on an outline where its two sides differ, and flat faces lie where a cell begins or ends. So nothing is to be
 * cut, and the kernel is not asked for a boolean.
 *
 * @param shape  a recipe
 * @param plane  what works in the plane
 * @returns a closed mesh; undefined where the recipe holds anything else, or outlines meet
 */
export function uprightBody(shape: Shape, { join, triangulate }: PlaneWork): Mesh | undefined {
  const plan = uprightPlan(shape, join);
  if (!plan) return undefined;
  const walls = plan.loops.map((_, loop) => wallsOn(loop, plan));
  const bores = boresOf(plan, walls);
  if (!bores) return undefined;
  const body = new UprightMesh(plan, bores);
  for (const [loop, spans] of walls.entries()) if (!plan.loops[loop]!.bore) body.addWalls(loop, spans);
  body.addFaces(triangulate);
  const mesh = body.mesh();
  if (mesh.triangles.length === 0) return undefined;
  return bores.size === 0 ? mesh : stitched(mesh, body.boreWalls(), triangulate);
}

/** The walls on a loop. All of one loop are on one side: a leaf either adds wherever it counts, or takes away. */
function wallsOn(loop: number, { loops, cells, levels }: UprightPlan): Span[] {
  const { around } = loops[loop]!;
  const sideAt = (i: number) => cells[loop]![i]! - cells[around]![i]!;
  const spans: Span[] = [];
  for (let i = 1, low = 0; i <= levels.length; i++) {
    const side = sideAt(i - 1);
    if (side === sideAt(i)) continue;
    if (side !== 0) spans.push({ low, high: i - 1, side });
    low = i - 1;
  }
  return spans;
}
