import { fault } from '../units/faults.js';
import type { TaggedMesh } from './mesh.js';
import { type Outline, polygonArea } from './outline.js';
import type { Prism, Strokes } from './recipe.js';

/** Cuts polygons (outer counter-clockwise, holes clockwise) into triangles over their points, all points kept. */
export type Triangulate = (polygons: [number, number][][]) => readonly (readonly [number, number, number])[];

/**
 * The closed mesh of a prism. Both ends take the same triangles, and every outline point is kept, so that ends and
 * walls share all their edges.
 *
 * @param prism        outlines and heights  [mm]
 * @param triangulate  cuts the end face into triangles
 * @returns a closed mesh, outward facets tagged by wall, loop by loop as its outline runs, then bottom and top  [mm]
 * @throws InputError  an outline runs clockwise or has fewer than 3 points, or `to` is not above `from`
 * @example prismMesh({ kind: 'prism', outlines: [[[0, 0], [1, 0], [0, 1]]], from: 0, to: 1 }, () => [[0, 1, 2]]).triangles.length / 3 // 8
 */
export function prismMesh({ outlines, from, to }: Prism, triangulate: Triangulate): TaggedMesh {
  const loops = outlines.map((outline, i) => loopOf(outline, i > 0));
  return raised(loops, { from, to }, triangulate);
}

/** Joins polygons that may overlap (counter-clockwise) to loops that do not: outer ones counter-clockwise, holes clockwise. */
export type Join = (polygons: [number, number][][]) => [number, number][][];

/** What works in the plane. */
export interface PlaneWork {
  readonly join: Join;
  readonly triangulate: Triangulate;
}

/**
 * The closed mesh of strokes: joined in their plane, where it costs next to nothing, then raised.
 *
 * @param strokes      outlines and heights  [mm]
 * @param join         joins outlines in the plane
 * @param triangulate  cuts the end face into triangles
 * @returns a closed mesh, outward facets, its tags counting sides as {@link prismMesh} does  [mm]
 * @throws InputError  as prismMesh, or there is no outline
 */
export function strokesMesh({ outlines, from, to }: Strokes, join: Join, triangulate: Triangulate): TaggedMesh {
  if (outlines.length === 0) throw fault('outlines', 0, 'must hold at least one');
  return raised(join(outlines.map((outline) => loopOf(outline, false))), { from, to }, triangulate);
}

function raised(
  loops: readonly [number, number][][],
  { from, to }: Pick<Prism, 'from' | 'to'>,
  triangulate: Triangulate,
): TaggedMesh {
  if (!(to > from)) throw fault('to', to, `must be above ${from}`);
  const points = loops.flat();
  const count = points.length;
  const positions = new Float64Array(6 * count);
  for (const [i, [x, y]] of points.entries()) {
    positions.set([x, y, from], 3 * i);
    positions.set([x, y, to], 3 * (count + i));
  }
  const ends = triangulate([...loops]);
  const triangles = new Uint32Array(6 * ends.length + 6 * count);
  const tags = new Uint32Array(triangles.length / 3);
  let at = 0;
  for (const [a, b, c] of ends) {
    triangles.set([a, c, b, count + a, count + b, count + c], at);
    tags.set([count, count + 1], at / 3);
    at += 6;
  }
  let start = 0;
  for (const [hole, loop] of loops.entries()) {
    for (let k = 0; k < loop.length; k++) {
      const [i, j] = [start + k, start + ((k + 1) % loop.length)];
      triangles.set([i, j, count + j, i, count + j, count + i], at);
      // a hole runs backwards, so that its side k is the one before last of its outline
      tags.fill(start + (hole > 0 ? (2 * loop.length - 2 - k) % loop.length : k), at / 3, at / 3 + 2);
      at += 6;
    }
    start += loop.length;
  }
  return { positions, triangles, tags };
}

/** @throws InputError  an outline runs clockwise or has fewer than 3 points */
export function loopOf(outline: Outline, hole: boolean): [number, number][] {
  if (outline.length < 3) throw fault('outlines', outline.length, 'must have at least 3 points');
  if (!(polygonArea(outline) > 0)) throw fault('outlines', polygonArea(outline), 'must run counter-clockwise');
  const points = outline.map(([x, y]): [number, number] => [x, y]);
  return hole ? points.reverse() : points;
}
