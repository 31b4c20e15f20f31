import { facetNormals } from './facet-normals.js';
import { neighbourSides } from './facet-sides.js';
import type { SurfacedMesh } from './kernel.js';
import type { Look } from './look.js';
import { normalAt, type Surface, type Vector } from './surfaces.js';

/** A facet lower than this is a sliver: it faces as its surface does, mm. */
const SLIVER = 2e-4;
/** A facet whose normal has less than this towards the viewer is seen on its edge. */
const EDGE_ON = 2e-4;

/** A mesh as it is looked at. */
export interface SeenFacets {
  readonly mesh: SurfacedMesh;
  /** corners on the paper: x, y, and how near */
  readonly points: Float64Array;
  /** unit normals of the facets, three values each */
  readonly normals: Float64Array;
  /** 1 where a facet faces the viewer, −1 where it faces away, 0 on its edge */
  readonly facing: Int8Array;
  /** the neighbour's side of every side, as of {@link neighbourSides} */
  readonly sides: Int32Array;
}

/** Corners on the paper and facets by the way they face. */
export function seenFacets(mesh: SurfacedMesh, look: Look): SeenFacets {
  const normals = normalsOf(mesh);
  const facing = new Int8Array(mesh.tags.length);
  const [x, y, z] = look.toward;
  for (let facet = 0; facet < facing.length; facet++) {
    const towards = normals[3 * facet]! * x + normals[3 * facet + 1]! * y + normals[3 * facet + 2]! * z;
    facing[facet] = towards > EDGE_ON ? 1 : towards < -EDGE_ON ? -1 : 0;
  }
  return { mesh, points: onPaper(mesh.positions, look), normals, facing, sides: neighbourSides(mesh.triangles) };
}

export function cornerAt(positions: Float64Array, corner: number): Vector {
  return [positions[3 * corner]!, positions[3 * corner + 1]!, positions[3 * corner + 2]!];
}

function onPaper(positions: Float64Array, { right, up, toward }: Look): Float64Array {
  const points = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    const x = positions[i]!;
    const y = positions[i + 1]!;
    const z = positions[i + 2]!;
    points[i] = right[0] * x + right[1] * y + right[2] * z;
    points[i + 1] = up[0] * x + up[1] * y + up[2] * z;
    points[i + 2] = toward[0] * x + toward[1] * y + toward[2] * z;
  }
  return points;
}

/** Normals of the facets; a sliver takes that of its surface, on the side on which the surface's largest facet lies. */
function normalsOf(mesh: SurfacedMesh): Float64Array {
  const { tags, surfaces } = mesh;
  const { normals, twice } = facetNormals(mesh);
  const slivers: number[] = [];
  const largest = new Map<number, number>();
  for (let facet = 0; facet < tags.length; facet++) {
    const area = twice[facet]!;
    if (area < SLIVER * longestSide(mesh, facet) || area === 0) slivers.push(facet);
    const known = largest.get(tags[facet]!);
    if (known === undefined || area > twice[known]!) largest.set(tags[facet]!, facet);
  }
  for (const facet of slivers) {
    const tag = tags[facet]!;
    const own = normalAt(surfaces[tag]!, middleOf(mesh, facet));
    if (own) normals.set(turned(own, signOf(mesh, normals, surfaces[tag]!, largest.get(tag)!)), 3 * facet);
  }
  return normals;
}

function longestSide({ positions: p, triangles }: SurfacedMesh, facet: number): number {
  const a = 3 * triangles[3 * facet]!;
  const b = 3 * triangles[3 * facet + 1]!;
  const c = 3 * triangles[3 * facet + 2]!;
  return Math.sqrt(Math.max(apart(p, a, b), apart(p, b, c), apart(p, c, a)));
}

/** Square of a distance. */
function apart(p: Float64Array, a: number, b: number): number {
  return (p[b]! - p[a]!) ** 2 + (p[b + 1]! - p[a + 1]!) ** 2 + (p[b + 2]! - p[a + 2]!) ** 2;
}

/** Whether a surface's own normal points out of the solid, by its largest facet. */
function signOf(mesh: SurfacedMesh, normals: Float64Array, surface: Surface, largest: number): 1 | -1 {
  const own = normalAt(surface, middleOf(mesh, largest));
  if (!own) return 1;
  const [x, y, z] = cornerAt(normals, largest);
  return own[0] * x + own[1] * y + own[2] * z < 0 ? -1 : 1;
}

function turned([x, y, z]: Vector, sign: 1 | -1): Vector {
  return [sign * x, sign * y, sign * z];
}

function middleOf({ positions, triangles }: SurfacedMesh, facet: number): Vector {
  const [a, b, c] = [0, 1, 2].map((k) => cornerAt(positions, triangles[3 * facet + k]!)) as [Vector, Vector, Vector];
  return [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3, (a[2] + b[2] + c[2]) / 3];
}
