import { onceFor } from '../units/once.js';
import { loftConvex } from './convex-loft.js';
import type { PaperPoint } from './drawn.js';
import { latheMesh } from './lathe-mesh.js';
import type { Mesh } from './mesh.js';
import type { Prism, Strokes } from './recipe.js';
import { type Leaf, threadCore } from './surfaces.js';

/** A 3 × 4 matrix, row by row, from a shape's own place to the paper: x, y, and how far it stands before the plane. */
export type OntoPaper = readonly number[];

/** A plane is along a prism where a millimetre of its height changes less than this of the depth. */
const ALONG = 1e-9;

/**
 * Loops in which a leaf of a recipe meets the plane of the paper, by the even-odd rule; a thread is the cylinder that
 * stands for it. A corner that lies in the plane counts as behind it, so that loops always close.
 *
 * @param leaf  as it is modelled                     [mm]
 * @param onto  from there to the paper
 * @returns loops on the paper, none where the leaf does not meet it  [mm]
 */
export function leafSection(leaf: Leaf, onto: OntoPaper): PaperPoint[][] {
  switch (leaf.kind) {
    case 'prism':
      return prismSection(leaf, onto);
    case 'strokes':
      return leaf.outlines.flatMap((outline) => prismSection({ ...leaf, kind: 'prism', outlines: [outline] }, onto));
    default:
      return meshSection(meshOf(leaf), onto);
  }
}

/** Several planes cut one mesh. */
const meshOf = onceFor((leaf: Exclude<Leaf, Prism | Strokes>): Mesh => {
  switch (leaf.kind) {
    case 'lathe':
      return latheMesh(leaf);
    case 'thread':
      return latheMesh(threadCore(leaf.thread));
    case 'loft':
      return loftConvex(leaf.outline, leaf.levels);
    case 'mesh':
      return leaf.mesh;
  }
});

/** Where a mesh meets the plane: from facet to facet across the edges that pass through it. */
function meshSection({ positions, triangles }: Mesh, onto: OntoPaper): PaperPoint[][] {
  const depths = Float64Array.from({ length: positions.length / 3 }, (_, i) => row(onto, 2, cornerOf(positions, i)));
  const next = new Map<number, { readonly at: PaperPoint; readonly to: number }>();
  for (let i = 0; i < triangles.length; i += 3) {
    let [enters, leaves] = [-1, -1];
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[i + k]!, triangles[i + ((k + 1) % 3)]!];
      const [before, after] = [depths[a]! > 0, depths[b]! > 0];
      if (before === after) continue;
      if (after) enters = edgeKey(a, b);
      else leaves = edgeKey(a, b);
    }
    if (enters < 0) continue;
    next.set(enters, { at: crossing(enters), to: leaves });
  }
  return loopsOf(next);

  function crossing(edge: number): PaperPoint {
    const [a, b] = [Math.floor(edge / MOST), edge % MOST];
    const share = depths[a]! / (depths[a]! - depths[b]!);
    const [p, q] = [cornerOf(positions, a), cornerOf(positions, b)];
    return onPaper(onto, [0, 1, 2].map((axis) => p[axis]! + share * (q[axis]! - p[axis]!)) as [number, number, number]);
  }
}

/** More than a mesh has corners. */
const MOST = 2 ** 26;

function edgeKey(a: number, b: number): number {
  return Math.min(a, b) * MOST + Math.max(a, b);
}

function loopsOf(next: Map<number, { readonly at: PaperPoint; readonly to: number }>): PaperPoint[][] {
  const loops: PaperPoint[][] = [];
  for (const start of next.keys()) {
    const loop: PaperPoint[] = [];
    for (let step = next.get(start), key = start; step; step = next.get(key)) {
      loop.push(step.at);
      next.delete(key);
      key = step.to;
    }
    if (loop.length > 2) loops.push(loop);
  }
  return loops;
}

/** A plane along the prism cuts strips out of it, any other one its outlines, as far as it is between both ends. */
function prismSection({ outlines, from, to }: Prism, onto: OntoPaper): PaperPoint[][] {
  const depth = (x: number, y: number) => row(onto, 2, [x, y, 0]);
  const climb = onto[10]!;
  if (Math.abs(climb) < ALONG) {
    const ends = outlines
      .flatMap((outline) => crossings(outline, depth))
      .sort((p, q) => along(onto, p) - along(onto, q));
    return Array.from({ length: ends.length / 2 }, (_, i) => {
      const [[x0, y0], [x1, y1]] = [ends[2 * i]!, ends[2 * i + 1]!];
      const corners = [
        [x0, y0, from],
        [x1, y1, from],
        [x1, y1, to],
        [x0, y0, to],
      ] as const;
      return corners.map((corner) => onPaper(onto, corner));
    });
  }
  const height = ([x, y]: PaperPoint) => -depth(x, y) / climb;
  return outlines
    .map((outline) =>
      cutOff(
        cutOff(outline, (point) => height(point) - from),
        (point) => to - height(point),
      ),
    )
    .filter((loop) => loop.length > 2)
    .map((loop) => loop.map((point) => onPaper(onto, [point[0], point[1], height(point)])));
}

/** Places on the sides of an outline where a value that is linear over the plane passes from above 0 to not above. */
function crossings(outline: readonly PaperPoint[], value: (x: number, y: number) => number): PaperPoint[] {
  return outline.flatMap((p, i): PaperPoint[] => {
    const q = outline[(i + 1) % outline.length]!;
    const [before, after] = [value(...p), value(...q)];
    return before > 0 === after > 0 ? [] : [between(p, q, before / (before - after))];
  });
}

/** The part of a loop where a linear value is not below 0. */
function cutOff(loop: readonly PaperPoint[], value: (point: PaperPoint) => number): PaperPoint[] {
  return loop.flatMap((p, i) => {
    const q = loop[(i + 1) % loop.length]!;
    const [here, there] = [value(p), value(q)];
    const kept = here >= 0 ? [p] : [];
    return here >= 0 === there >= 0 ? kept : [...kept, between(p, q, here / (here - there))];
  });
}

function between(p: PaperPoint, q: PaperPoint, share: number): PaperPoint {
  return [p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])];
}

/** How far along the line in which the plane of a standing prism meets its foot. */
function along(onto: OntoPaper, [x, y]: PaperPoint): number {
  return onto[8]! * y - onto[9]! * x;
}

function cornerOf(positions: Float64Array, corner: number): readonly [number, number, number] {
  return [positions[3 * corner]!, positions[3 * corner + 1]!, positions[3 * corner + 2]!];
}

function onPaper(onto: OntoPaper, point: readonly [number, number, number]): PaperPoint {
  return [row(onto, 0, point), row(onto, 1, point)];
}

function row(onto: OntoPaper, index: 0 | 1 | 2, [x, y, z]: readonly [number, number, number]): number {
  const at = 4 * index;
  return onto[at]! * x + onto[at + 1]! * y + onto[at + 2]! * z + onto[at + 3]!;
}
