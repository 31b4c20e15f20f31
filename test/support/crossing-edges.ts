import { facetGraph, sideOf } from '../../src/solid/facet-graph.js';
import type { Mesh } from '../../src/solid/mesh.js';
import { rayCaster } from '../../src/solid/ray-caster.js';

/** Ends of an edge count as apart from the facets that it ends on, mm. */
const END = 1e-6;

/** How many edges of a mesh pass through a facet that they do not end on: facets that cross or fold over one another. */
export function crossingEdges(mesh: Mesh): number {
  const graph = facetGraph(mesh);
  const caster = rayCaster(mesh);
  const { positions: p, triangles: t } = mesh;
  let crossing = 0;
  for (let side = 0; side < t.length; side++) {
    if (graph.across[side]! < side) continue;
    const { from, to } = sideOf(graph, side);
    const [x, y, z] = [p[3 * from]!, p[3 * from + 1]!, p[3 * from + 2]!];
    const [dx, dy, dz] = [p[3 * to]! - x, p[3 * to + 1]! - y, p[3 * to + 2]! - z];
    const length = Math.hypot(dx, dy, dz);
    const hit = caster.first([x, y, z, dx / length, dy / length, dz / length], END, length - END);
    const ends = hit && [t[3 * hit.facet]!, t[3 * hit.facet + 1]!, t[3 * hit.facet + 2]!];
    if (ends && !ends.includes(from) && !ends.includes(to)) crossing++;
  }
  return crossing;
}
