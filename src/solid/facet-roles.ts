import { outlineBounds } from './convex.js';
import { type FacetGraph, middleOf } from './facet-graph.js';
import { matrixWithin, placementMatrix } from './mesh.js';
import type { Outline } from './outline.js';
import type { Shape } from './recipe.js';

/** What a facet belongs to, as far as walls and ceilings are judged differently; a mark is whatever bounds no wall. */
export const ROLE = { plain: 0, thread: 1, bevel: 2, mark: 3 } as const;

/** Least and most x, y and z. */
type Box = readonly [x0: number, y0: number, z0: number, x1: number, y1: number, z1: number];

/** Tells from a point on a facet and its normal, both in the recipe's own frame, whether the facet is meant. */
interface Region {
  readonly role: number;
  readonly matrix: readonly number[];
  /** about all that it holds, in the recipe's own frame */
  readonly within: Box;
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
  const roles = new Uint8Array(mesh.triangles.length / 3);
  const middles = middlesOf(mesh);
  for (const region of regionsOf(shape, STILL)) giveRole(region, roles, mesh.normals, middles);
  return roles;
}

function middlesOf(mesh: FacetGraph): Float64Array {
  const middles = new Float64Array(mesh.triangles.length);
  for (let facet = 0; 3 * facet < middles.length; facet++) {
    const [x, y, z] = middleOf(mesh, facet);
    middles[3 * facet] = x;
    middles[3 * facet + 1] = y;
    middles[3 * facet + 2] = z;
  }
  return middles;
}

/** Gives the facets of a region their role, those aside that an earlier one holds. */
function giveRole({ role, matrix, within, holds }: Region, roles: Uint8Array, n: Float64Array, middles: Float64Array) {
  const m = Float64Array.from(matrix);
  const box = placedBox(within, matrix);
  for (let facet = 0; facet < roles.length; facet++) {
    const at = 3 * facet;
    const x = middles[at]!;
    const y = middles[at + 1]!;
    const z = middles[at + 2]!;
    if (x < box[0]! || y < box[1]! || z < box[2]! || x > box[3]! || y > box[4]! || z > box[5]!) continue;
    if (roles[facet] !== ROLE.plain) continue;
    const u = x - m[3]!;
    const v = y - m[7]!;
    const w = z - m[11]!;
    const nx = n[at]!;
    const ny = n[at + 1]!;
    const nz = n[at + 2]!;
    const isHeld = holds(
      m[0]! * u + m[4]! * v + m[8]! * w,
      m[1]! * u + m[5]! * v + m[9]! * w,
      m[2]! * u + m[6]! * v + m[10]! * w,
      m[0]! * nx + m[4]! * ny + m[8]! * nz,
      m[1]! * nx + m[5]! * ny + m[9]! * nz,
      m[2]! * nx + m[6]! * ny + m[10]! * nz,
    );
    if (isHeld) roles[facet] = role;
  }
}

/** The box about a placed one, a little larger than what rounding moves. */
function placedBox(box: Box, m: readonly number[]): Float64Array {
  const placed = new Float64Array(6);
  for (let row = 0; row < 3; row++) {
    let [low, high] = [m[4 * row + 3]! - 1e-6, m[4 * row + 3]! + 1e-6];
    for (let axis = 0; axis < 3; axis++) {
      const [one, other] = [m[4 * row + axis]! * box[axis]!, m[4 * row + axis]! * box[axis + 3]!];
      low += Math.min(one, other);
      high += Math.max(one, other);
    }
    placed[row] = low;
    placed[row + 3] = high;
  }
  return placed;
}

/** About all that lies within a radius of the axis, between two heights. */
function roundBox(radius: number, from: number, to: number): Box {
  return [0 - radius, 0 - radius, from, radius, radius, to];
}

/** Farther than any part reaches, mm. */
const ANYWHERE = 1e9;

/** Letters, and the sign of the face that goes up, both a few tenths high or deep: neither is a wall nor leaves one. */
const MARKS = ['mark', 'up-mark'];

function regionsOf(shape: Shape, matrix: readonly number[]): Region[] {
  switch (shape.kind) {
    case 'moved':
      return regionsOf(shape.shape, matrixWithin(matrix, shape));
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
    within: roundBox(outer, from, to),
    holds: (x, y, z, nx, ny, nz) => {
      const radius = Math.sqrt(x * x + y * y);
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
  // its slope goes on as far as a middle may stand off it
  const most = Math.max(r0, r1) + NEAR * Math.abs((r1 - r0) / (z1 - z0)) + 2 * chord;
  return {
    role: ROLE.bevel,
    matrix,
    within: roundBox(Math.min(most, ANYWHERE), Math.min(z0, z1) - NEAR, Math.max(z0, z1) + NEAR),
    holds: (x, y, z, _nx, _ny, nz) => {
      if (z < Math.min(z0, z1) - NEAR || z > Math.max(z0, z1) + NEAR) return false;
      if (Math.abs(Math.abs(nz) - lean) > SLOPE) return false;
      return Math.abs(Math.sqrt(x * x + y * y) - (r0 + ((r1 - r0) * (z - z0)) / (z1 - z0))) < 2 * chord;
    },
  };
}

function stepRegion([z0, low]: Point, [z1, high]: Point, matrix: readonly number[]): Region {
  const lean = Math.abs(high - low) / Math.hypot(high - low, z1 - z0);
  return {
    role: ROLE.bevel,
    matrix,
    within: roundBox(ANYWHERE, z0, z1),
    holds: (_x, _y, z, _nx, _ny, nz) => z > z0 && z < z1 && Math.abs(Math.abs(nz) - lean) < SLOPE,
  };
}

/** Boxes about the strokes of a mark. */
function markRegions(shape: Shape, matrix: readonly number[]): Region[] {
  if (shape.kind === 'moved') return markRegions(shape.shape, matrixWithin(matrix, shape));
  if ('of' in shape) return shape.of.flatMap((one) => markRegions(one, matrix));
  if (shape.kind !== 'prism' && shape.kind !== 'strokes') return [];
  const outlines = shape.kind === 'prism' ? shape.outlines.slice(0, 1) : shape.outlines;
  const sides = Float64Array.from(outlines.flatMap(sidesAbout));
  const holds: Region['holds'] = (x, y, z) => {
    if (!(z > shape.from - NEAR && z < shape.to + NEAR)) return false;
    for (let i = 0; i < sides.length; i += 4) {
      if (x > sides[i]! && y > sides[i + 1]! && x < sides[i + 2]! && y < sides[i + 3]!) return true;
    }
    return false;
  };
  const [x0, y0, x1, y1] = sidesAbout(outlines.flat());
  return [{ role: ROLE.mark, matrix, within: [x0, y0, shape.from - NEAR, x1, y1, shape.to + NEAR], holds }];
}

/** The box about an outline, and a little more. */
function sidesAbout(outline: Outline): [x0: number, y0: number, x1: number, y1: number] {
  const { min, max } = outlineBounds(outline);
  return [min[0] - NEAR, min[1] - NEAR, max[0] + NEAR, max[1] + NEAR];
}

/** The flat ends of a hole that stops a layer short of what it opens into. */
function endRegions(shape: Shape, matrix: readonly number[]): Region[] {
  if (shape.kind !== 'prism') return [];
  const { min, max } = outlineBounds(shape.outlines[0]);
  const isWithin = (x: number, y: number) => x > min[0] && x < max[0] && y > min[1] && y < max[1];
  const holds: Region['holds'] = (x, y, z, _nx, _ny, nz) =>
    Math.abs(nz) > 0.99 && Math.min(Math.abs(z - shape.from), Math.abs(z - shape.to)) < NEAR && isWithin(x, y);
  const within: Box = [...min, shape.from - NEAR, ...max, shape.to + NEAR];
  return [{ role: ROLE.mark, matrix, within, holds }];
}
