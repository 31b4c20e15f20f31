import { cutRegions } from './cut-regions.js';
import type { Drawn, PaperPoint } from './drawn.js';
import { edgeCircle } from './edge-circle.js';
import { joined, Occluders, type Span, without } from './hidden-spans.js';
import type { SurfacedMesh } from './kernel.js';
import { GHOST, type Look, seenAt } from './look.js';
import { type ArcPiece, mergeArcs } from './merge-arcs.js';
import { type LinePiece, mergeLines } from './merge-lines.js';
import { type SeenEdge, seenEdges } from './seen-edges.js';
import { cornerAt, type SeenFacets, seenFacets } from './seen-facets.js';
import { dot, type Vector } from './surfaces.js';

/** Lines of solids as they are seen, and what a cut lays open of each. */
export interface SeenLines {
  readonly visible: readonly Drawn[];
  readonly hidden: readonly Drawn[];
  /** by solid: loops, holes among them by the even-odd rule */
  readonly regions: readonly (readonly (readonly PaperPoint[])[])[];
}

/** What of the edges is drawn. */
export interface Drawing {
  /** edges of features that are drawn where they are hidden, too */
  readonly hidden?: readonly string[];
}

/**
 * Lines of solids seen from one side: sharp edges and silhouettes, visible and hidden ones apart, circles as circles.
 * Seen along the axis, an edge that is only broken is drawn as the one line that it would be.
 *
 * @param solids  whole, or cut by the shapes of `look.ts`            [mm]
 * @param look    from where
 * @param drawing features that are drawn hidden, too
 * @returns lines on the paper                                         [mm]
 */
export function seenLines(solids: readonly SurfacedMesh[], look: Look, { hidden = [] }: Drawing = {}): SeenLines {
  const seen = solids.map((solid) => seenFacets(solid, look));
  const occluders = new Occluders(seen);
  const lines: LinePiece[] = [];
  const arcs: ArcPiece[] = [];
  for (const [solid, facets] of seen.entries()) {
    for (const edge of seenEdges(facets)) {
      const names = edge.surfaces.map(({ feature }) => feature);
      if (names.includes(GHOST)) continue;
      if (isBreak(edge, look)) continue;
      const asHidden = names.some((name) => name !== undefined && hidden.includes(name));
      if (!edge.inFront && !asHidden) continue;
      addPieces({ solid, facets, edge, look, occluders, asHidden }, lines, arcs);
    }
  }
  const [straight, round] = [mergeLines(lines), mergeArcs(arcs)];
  return {
    visible: [...straight.visible, ...round.visible],
    hidden: [...straight.hidden, ...round.hidden],
    regions: seen.map(cutRegions),
  };
}

/** Whether an edge is the second one that a chamfer leaves, or lies between two, seen along the axis. */
function isBreak({ surfaces, silhouette }: SeenEdge, { toward }: Look): boolean {
  if (silhouette || Math.abs(toward[2]) < 1 || !surfaces.some(({ broken }) => broken)) return false;
  return surfaces.every(
    ({ form, broken }) => broken || (form.kind === 'plane' && Math.abs(dot(form.normal, toward)) > 1 - 1e-6),
  );
}

interface Found {
  readonly solid: number;
  readonly facets: SeenFacets;
  readonly edge: SeenEdge;
  readonly look: Look;
  readonly occluders: Occluders;
  readonly asHidden: boolean;
}

function addPieces(
  { solid, facets, edge, look, occluders, asHidden }: Found,
  lines: LinePiece[],
  arcs: ArcPiece[],
): void {
  const { points, mesh } = facets;
  const [from, to] = [cornerAt(points, edge.from), cornerAt(points, edge.to)];
  const taken: Span[] = edge.inFront ? occluders.hides(from, to, { solid, facets: edge.facets }) : [[0, 1]];
  const spans = [
    ...without([[0, 1]], taken).map((span) => ({ span, hidden: false })),
    ...(asHidden ? joined(taken).map((span) => ({ span, hidden: true })) : []),
  ];
  const circle = circleOnPaper(edge, [cornerAt(mesh.positions, edge.from), cornerAt(mesh.positions, edge.to)], look);
  for (const { span, hidden } of spans) {
    const [a, b] = span.map((share): PaperPoint => between(from, to, share)) as [PaperPoint, PaperPoint];
    if (circle) arcs.push({ ...circle, ends: [angle(circle.center, a), angle(circle.center, b)], hidden });
    else lines.push({ from: a, to: b, hidden });
  }
}

function circleOnPaper({ surfaces }: SeenEdge, ends: readonly [Vector, Vector], look: Look) {
  const circle = surfaces[0] === surfaces[1] ? undefined : edgeCircle(surfaces, ends);
  if (!circle || Math.abs(dot(circle.axis, look.toward)) < 1 - 1e-9) return undefined;
  const [x, y] = seenAt(look, circle.center);
  return { center: [x, y] as const, radius: circle.radius };
}

function between(from: readonly number[], to: readonly number[], share: number): PaperPoint {
  return [from[0]! + share * (to[0]! - from[0]!), from[1]! + share * (to[1]! - from[1]!)];
}

function angle(center: PaperPoint, point: PaperPoint): number {
  return (Math.atan2(point[1] - center[1], point[0] - center[0]) * 180) / Math.PI;
}
