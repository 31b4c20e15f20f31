import type { PaperPoint } from './drawn.js';
import { CUT } from './look.js';
import type { SeenFacets } from './seen-facets.js';

/** Corners on a straight side are left out, mm². */
const STRAIGHT = 1e-9;

/** What a cut lays open of a solid: loops on the paper, holes among them by the even-odd rule. */
export function cutRegions({ mesh, points }: SeenFacets): PaperPoint[][] {
  const { triangles, tags, surfaces } = mesh;
  const next = new Map<number, number[]>();
  const sides = new Set<number>();
  const key = (a: number, b: number) => a * 2 ** 26 + b;
  for (let facet = 0; facet < tags.length; facet++) {
    if (surfaces[tags[facet]!]!.feature !== CUT) continue;
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[3 * facet + k]!, triangles[3 * facet + ((k + 1) % 3)]!];
      // a side that runs both ways lies inside
      if (!sides.delete(key(b, a))) sides.add(key(a, b));
    }
  }
  for (const side of sides) {
    const [a, b] = [Math.floor(side / 2 ** 26), side % 2 ** 26];
    next.set(a, [...(next.get(a) ?? []), b]);
  }
  const at = (corner: number): PaperPoint => [points[3 * corner]!, points[3 * corner + 1]!];
  const loops: PaperPoint[][] = [];
  for (const [start] of next) {
    while ((next.get(start) ?? []).length > 0) {
      const loop: PaperPoint[] = [];
      for (let corner = start; ; ) {
        loop.push(at(corner));
        const to = next.get(corner)?.pop();
        if (to === undefined || to === start) break;
        corner = to;
      }
      const kept = turning(loop);
      if (kept.length > 2) loops.push(kept);
    }
  }
  return loops;
}

function turning(loop: readonly PaperPoint[]): PaperPoint[] {
  return loop.filter(([x, y], i) => {
    const [before, after] = [loop.at(i - 1)!, loop[(i + 1) % loop.length]!];
    return Math.abs((x - before[0]) * (after[1] - y) - (y - before[1]) * (after[0] - x)) > STRAIGHT;
  });
}
