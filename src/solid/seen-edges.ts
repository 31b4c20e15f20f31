import { cornerAt, type SeenFacets } from './seen-facets.js';
import { dot, normalAt, type Surface, type Vector } from './surfaces.js';

/** Surfaces that meet under more than this make an edge: by their own normals, or by facets where only those tell. */
const SHARP = Math.cos((2.5 * Math.PI) / 180);
const SHARP_FACETS = Math.cos((25 * Math.PI) / 180);
/** An edge shorter than this on the paper is a point, mm. */
const POINT = 1e-6;

/** An edge that is drawn where it is seen: two corners, the facets on either side, and the surfaces of these. */
export interface SeenEdge {
  readonly from: number;
  readonly to: number;
  readonly facets: readonly [number, number];
  readonly surfaces: readonly [Surface, Surface];
  /** false where both facets face away, so that the solid itself hides it */
  readonly inFront: boolean;
  /** where a smooth surface turns away from the viewer */
  readonly silhouette: boolean;
}

/** Sharp edges and silhouettes of a solid. */
export function seenEdges(seen: SeenFacets): SeenEdge[] {
  const { mesh, facing, points, sides } = seen;
  const { triangles, tags, surfaces } = mesh;
  const found: SeenEdge[] = [];
  for (let i = 0; i < triangles.length; i++) {
    const other = sides[i]!;
    if (other > i || other < 0) continue;
    const facets = [Math.trunc(other / 3), Math.trunc(i / 3)] as const;
    const sameSurface = tags[facets[0]] === tags[facets[1]];
    const f = facing[facets[0]]!;
    const g = facing[facets[1]]!;
    const silhouette = f !== g && (f > 0 || g > 0);
    if (sameSurface && !silhouette) continue;
    const a = triangles[i]!;
    const b = triangles[i % 3 === 2 ? i - 2 : i + 1]!;
    const meet = [surfaces[tags[facets[0]]!]!, surfaces[tags[facets[1]]!]!] as const;
    if (sameSurface && meet[0].form.kind === 'plane') continue;
    const isSharp = !sameSurface && sharp(seen, facets, meet, [a, b]);
    if (!isSharp && !silhouette) continue;
    if (Math.hypot(points[3 * b]! - points[3 * a]!, points[3 * b + 1]! - points[3 * a + 1]!) < POINT) continue;
    found.push({ from: a, to: b, facets, surfaces: meet, inFront: f > 0 || g > 0, silhouette: !isSharp });
  }
  return found;
}

function sharp(
  { mesh, normals }: SeenFacets,
  facets: readonly [number, number],
  surfaces: readonly [Surface, Surface],
  [a, b]: readonly [number, number],
): boolean {
  const [p, q] = [cornerAt(mesh.positions, a), cornerAt(mesh.positions, b)];
  const middle: Vector = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2, (p[2] + q[2]) / 2];
  const own = surfaces.map((surface) => normalAt(surface, middle));
  // the mitre of two fillets runs out into the plane at their foot: no line of it would end anywhere
  if (surfaces[0].isFillet && surfaces[1].isFillet) return false;
  const byFacets = dot(cornerAt(normals, facets[0]), cornerAt(normals, facets[1]));
  if (own[0] === undefined || own[1] === undefined) return byFacets < SHARP_FACETS;
  // surfaces that run into one another face the same way; back to back, an edge as sharp as can be
  return Math.abs(dot(own[0], own[1])) < SHARP || byFacets < 0;
}
