import type { SurfacedMesh } from './kernel.js';
import { type Look, seenAt } from './look.js';
import { dot, normalAt, type Surface, type Vector } from './surfaces.js';

/** A facet lower than this is a sliver: it faces as its surface does, mm. */
const SLIVER = 2e-4;
/** A facet whose normal has less than this towards the viewer is seen on its edge. */
const EDGE_ON = 2e-4;

/** A mesh as it is looked at. */
export interface SeenFacets {
  readonly mesh: SurfacedMesh;
  /** corners on the paper: x, y, and how near */
  readonly points: Float64Array;
  /** unit normals of the facets */
  readonly normals: readonly Vector[];
  /** 1 where a facet faces the viewer, −1 where it faces away, 0 on its edge */
  readonly facing: Int8Array;
}

/** Corners on the paper and facets by the way they face. */
export function seenFacets(mesh: SurfacedMesh, look: Look): SeenFacets {
  const { positions, triangles, tags, surfaces } = mesh;
  const points = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) points.set(seenAt(look, cornerAt(positions, i / 3)), i);
  const flat = Array.from(tags, (_, facet) => flatNormal(positions, triangles, facet));
  const signs = signsOf(mesh, flat);
  const normals = flat.map(({ normal, height }, facet) => {
    if (height >= SLIVER) return normal;
    const own = normalAt(surfaces[tags[facet]!]!, middleOf(mesh, facet));
    if (own === undefined) return normal;
    const sign = signs.get(surfaces[tags[facet]!]!) ?? 1;
    return [sign * own[0], sign * own[1], sign * own[2]] as const;
  });
  const facing = Int8Array.from(normals, (normal) => {
    const towards = dot(normal, look.toward);
    return Math.abs(towards) < EDGE_ON ? 0 : Math.sign(towards);
  });
  return { mesh, points, normals, facing };
}

export function cornerAt(positions: Float64Array, corner: number): Vector {
  return [positions[3 * corner]!, positions[3 * corner + 1]!, positions[3 * corner + 2]!];
}

interface Flat {
  readonly normal: Vector;
  readonly area: number;
  /** over the longest side */
  readonly height: number;
}

function flatNormal(positions: Float64Array, triangles: Uint32Array, facet: number): Flat {
  const [a, b, c] = [0, 1, 2].map((k) => cornerAt(positions, triangles[3 * facet + k]!)) as [Vector, Vector, Vector];
  const u: Vector = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const v: Vector = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const n: Vector = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const twice = Math.hypot(...n);
  const longest = Math.max(Math.hypot(...u), Math.hypot(...v), Math.hypot(c[0] - b[0], c[1] - b[1], c[2] - b[2]));
  if (twice === 0) return { normal: [0, 0, 0], area: 0, height: 0 };
  return { normal: [n[0] / twice, n[1] / twice, n[2] / twice], area: twice / 2, height: twice / longest };
}

/** Whether a surface's own normal points out of the solid, by its largest facet. */
function signsOf(mesh: SurfacedMesh, flat: readonly Flat[]): Map<Surface, 1 | -1> {
  const largest = new Map<Surface, number>();
  mesh.tags.forEach((tag, facet) => {
    const surface = mesh.surfaces[tag]!;
    const known = largest.get(surface);
    if (known === undefined || flat[facet]!.area > flat[known]!.area) largest.set(surface, facet);
  });
  return new Map(
    [...largest].map(([surface, facet]) => {
      const own = normalAt(surface, middleOf(mesh, facet));
      return [surface, own !== undefined && dot(own, flat[facet]!.normal) < 0 ? -1 : 1];
    }),
  );
}

function middleOf({ positions, triangles }: SurfacedMesh, facet: number): Vector {
  const [a, b, c] = [0, 1, 2].map((k) => cornerAt(positions, triangles[3 * facet + k]!)) as [Vector, Vector, Vector];
  return [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3, (a[2] + b[2] + c[2]) / 3];
}
