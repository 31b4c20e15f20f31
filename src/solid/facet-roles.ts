import { outlineBounds } from './convex.js';
import { type FacetGraph, middleOf } from './facet-graph.js';
import { type Placement, placementMatrix } from './mesh.js';
import type { Shape } from './recipe.js';

/** What a facet belongs to, as far as walls and ceilings are judged differently; a mark is whatever bounds no wall. */
export const ROLE = { plain: 0, thread: 1, bevel: 2, mark: 3 } as const;

/** Tells from a point on a facet and its normal, both in the recipe's own frame, whether the facet is meant. */
interface Region {
  readonly role: number;
  readonly matrix: readonly number[];
  readonly holds: (x: number, y: number, z: number, nx: number, ny: number, nz: number) => boolean;
}

/** Name of the feature that is a hole closed by a layer to be drilled through. */
export const MEMBRANE = 'membrane';

const STILL = placementMatrix({});
/** How far a facet's middle may stand off the surface it was cut from, besides its chord, mm. */
const NEAR = 0.02;
/** Normals that agree within this count as the same. */
const SLOPE = 0.02;

/**
 * Tells facets of a fused body apart by its recipe: those of threads, those that only break an edge or lead into a
 * bore, and those of marks.
 *
 * @param mesh   the fused body, where its recipe put it  [mm]
 * @param shape  the recipe
 * @returns a role a facet
 */
export function facetRoles(mesh: FacetGraph, shape: Shape): Uint8Array {
  const regions = regionsOf(shape, STILL);
  const roles = new Uint8Array(mesh.triangles.length / 3);
  const { normals: n } = mesh;
  for (let facet = 0; facet < roles.length && regions.length > 0; facet++) {
    const [x, y, z] = middleOf(mesh, facet);
    const [nx, ny, nz] = [n[3 * facet]!, n[3 * facet + 1]!, n[3 * facet + 2]!];
    for (const { role, matrix: m, holds } of regions) {
      const [u, v, w] = [x - m[3]!, y - m[7]!, z - m[11]!];
      const isHeld = holds(
        m[0]! * u + m[4]! * v + m[8]! * w,
        m[1]! * u + m[5]! * v + m[9]! * w,
        m[2]! * u + m[6]! * v + m[10]! * w,
        m[0]! * nx + m[4]! * ny + m[8]! * nz,
        m[1]! * nx + m[5]! * ny + m[9]! * nz,
        m[2]! * nx + m[6]! * ny + m[10]! * nz,
      );
      if (!isHeld) continue;
      roles[facet] = role;
      break;
    }
  }
  return roles;
}

/** Letters, and the sign of the face that goes up, both a few tenths high or deep: neither is a wall nor leaves one. */
const MARKS = ['mark', 'up-mark'];

function regionsOf(shape: Shape, matrix: readonly number[]): Region[] {
  switch (shape.kind) {
    case 'moved':
      return regionsOf(shape.shape, followed(matrix, shape));
    case 'feature':
      if (MARKS.includes(shape.name)) return markRegions(shape.shape, matrix);
      if (shape.name === MEMBRANE) return endRegions(shape.shape, matrix);
      return regionsOf(shape.shape, matrix);
    case 'thread':
      return [threadRegion(shape.thread, matrix)];
    case 'lathe':
      return (shape.broken ?? [])
        .map((i) => [shape.contour[i]!, shape.contour[i + 1]!] as const)
        .filter(([one, other]) => !isSteep(one, other))
        .map(([one, other]) => coneRegion(one, other, shape.sides, matrix));
    case 'loft':
      return (shape.broken ?? []).map((i) => stepRegion(shape.levels[i]!, shape.levels[i + 1]!, matrix));
    case 'union':
    case 'difference':
    case 'intersection':
      return shape.of.flatMap((one) => regionsOf(one, matrix));
    default:
      return [];
  }
}

/** Within the reach of a thread, and neither a flat end nor on the axis' own planes. */
function threadRegion(
  { ridge, from, to, columns }: Extract<Shape, { kind: 'thread' }>['thread'],
  matrix: readonly number[],
): Region {
  const radii = ridge.map(([, radius]) => radius);
  const chord = 1 / Math.cos(Math.PI / columns);
  const [inner, outer] = [Math.min(...radii) * 0.98 - NEAR, Math.max(...radii) * chord + NEAR];
  return {
    role: ROLE.thread,
    matrix,
    holds: (x, y, z, nx, ny, nz) => {
      const radius = Math.hypot(x, y);
      if (z < from || z > to || radius < inner || radius > outer || Math.abs(nz) > 0.9999) return false;
      // a slit or a cross hole looks aside, along the turn; a thread never does
      return Math.abs(nx * y - ny * x) < 0.7 * radius;
    },
  };
}

type Point = readonly [number, number];

/** Whether a cone stands so near to the axis that it bounds a wall as the bore below it does: a bearing's lead-in, by 30°. */
function isSteep([r0, z0]: Point, [r1, z1]: Point): boolean {
  return Math.abs(r1 - r0) < Math.tan((40 * Math.PI) / 180) * Math.abs(z1 - z0);
}

function coneRegion([r0, z0]: Point, [r1, z1]: Point, sides: number, matrix: readonly number[]): Region {
  const length = Math.hypot(r1 - r0, z1 - z0);
  const lean = Math.abs(r1 - r0) / length;
  const chord = Math.max(r0, r1) * (1 / Math.cos(Math.PI / sides) - 1) + NEAR;
  return {
    role: ROLE.bevel,
    matrix,
    holds: (x, y, z, _nx, _ny, nz) => {
      if (z < Math.min(z0, z1) - NEAR || z > Math.max(z0, z1) + NEAR) return false;
      if (Math.abs(Math.abs(nz) - lean) > SLOPE) return false;
      return Math.abs(Math.hypot(x, y) - (r0 + ((r1 - r0) * (z - z0)) / (z1 - z0))) < 2 * chord;
    },
  };
}

function stepRegion([z0, low]: Point, [z1, high]: Point, matrix: readonly number[]): Region {
  const lean = Math.abs(high - low) / Math.hypot(high - low, z1 - z0);
  return {
    role: ROLE.bevel,
    matrix,
    holds: (_x, _y, z, _nx, _ny, nz) => z > z0 && z < z1 && Math.abs(Math.abs(nz) - lean) < SLOPE,
  };
}

/** Boxes about the strokes of a mark. */
function markRegions(shape: Shape, matrix: readonly number[]): Region[] {
  if (shape.kind === 'moved') return markRegions(shape.shape, followed(matrix, shape));
  if ('of' in shape) return shape.of.flatMap((one) => markRegions(one, matrix));
  if (shape.kind !== 'prism' && shape.kind !== 'strokes') return [];
  const boxes = (shape.kind === 'prism' ? shape.outlines.slice(0, 1) : shape.outlines).map(outlineBounds);
  const within = (x: number, y: number) =>
    boxes.some(({ min, max }) => x > min[0] - NEAR && x < max[0] + NEAR && y > min[1] - NEAR && y < max[1] + NEAR);
  const holds: Region['holds'] = (x, y, z) => z > shape.from - NEAR && z < shape.to + NEAR && within(x, y);
  return [{ role: ROLE.mark, matrix, holds }];
}

/** The flat ends of a hole that stops a layer short of what it opens into. */
function endRegions(shape: Shape, matrix: readonly number[]): Region[] {
  if (shape.kind !== 'prism') return [];
  const { min, max } = outlineBounds(shape.outlines[0]);
  const within = (x: number, y: number) => x > min[0] && x < max[0] && y > min[1] && y < max[1];
  const holds: Region['holds'] = (x, y, z, _nx, _ny, nz) =>
    Math.abs(nz) > 0.99 && Math.min(Math.abs(z - shape.from), Math.abs(z - shape.to)) < NEAR && within(x, y);
  return [{ role: ROLE.mark, matrix, holds }];
}

/** The matrix of a placement inside another one. */
function followed(m: readonly number[], placement: Placement): number[] {
  const n = placementMatrix(placement);
  const rows = [0, 4, 8].flatMap((row) =>
    [0, 1, 2, 3].map(
      (column) =>
        m[row]! * n[column]! +
        m[row + 1]! * n[4 + column]! +
        m[row + 2]! * n[8 + column]! +
        (column === 3 ? m[row + 3]! : 0),
    ),
  );
  return rows;
}
