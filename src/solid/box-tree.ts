import type { Mesh } from './mesh.js';

/**
 * Facets sorted into a tree of boxes. Nodes stand in the order in which they are met: the first half of an inner one
 * follows it, `start` names the other half.
 */
export interface BoxTree {
  /** for each place of the tree the facet of the mesh that stands there */
  readonly order: Uint32Array;
  /** corners of the facets in that order, three a facet */
  readonly corners: Uint32Array;
  /** of a leaf its first place, of an inner node its second half */
  readonly start: Uint32Array;
  /** facets of a leaf, 0 for an inner node */
  readonly size: Uint8Array;
  /** least x, y, z and most x, y, z, six numbers a node */
  readonly boxes: Float64Array;
}

const LEAF = 4;
/** Halves may be as unlike as they are this far down; below, they are of equal count, so that no tree is deeper than `DEEPEST`. */
const UNLIKE = 32;
/** Steps from the top of a tree to its leaves, at most: {@link UNLIKE}, and as many more as halve what a mesh can hold. */
export const DEEPEST = 64;

/**
 * Sorts the facets of a mesh into a tree of boxes: each is parted at the middle of the longest side of the box about its
 * facets' middles. Parting by place instead of by count takes one pass, and boxes overlap less where small facets stand
 * beside large ones.
 *
 * @param mesh  any triangles  [mm]
 * @returns the tree
 * @example boxTree(cube).boxes.slice(0, 6) // [-0.5, -0.5, -0.5, 0.5, 0.5, 0.5]
 */
export function boxTree({ positions: p, triangles: t }: Mesh): BoxTree {
  const count = t.length / 3;
  const order = Uint32Array.from({ length: count }, (_, facet) => facet);
  const middles = middlesOf(p, t);
  const start = new Uint32Array(2 * count + 1);
  const size = new Uint8Array(2 * count + 1);
  let nodes = 0;
  const split = (from: number, to: number, depth: number): void => {
    const node = nodes++;
    if (to - from <= LEAF) {
      start[node] = from;
      size[node] = to - from;
      return;
    }
    const half = depth < UNLIKE ? parted(order, middles, from, to) : (from + to) >> 1;
    split(from, half, depth + 1);
    start[node] = nodes;
    split(half, to, depth + 1);
  };
  split(0, count, 0);
  const corners = inOrder(t, order);
  return { order, corners, start, size, boxes: boxesOf({ start, size, corners }, nodes, p) };
}

/** Sums of three corners: the middles of the facets, three times as large. */
function middlesOf(p: Float64Array, t: Uint32Array): Float32Array {
  const middles = new Float32Array(t.length);
  for (let i = 0; i < t.length; i += 3) {
    const a = 3 * t[i]!;
    const b = 3 * t[i + 1]!;
    const c = 3 * t[i + 2]!;
    middles[i] = p[a]! + p[b]! + p[c]!;
    middles[i + 1] = p[a + 1]! + p[b + 1]! + p[c + 1]!;
    middles[i + 2] = p[a + 2]! + p[b + 2]! + p[c + 2]!;
  }
  return middles;
}

/** Puts facets on the near side of the middle first; gives the place of the first on the far side. */
function parted(order: Uint32Array, middles: Float32Array, from: number, to: number): number {
  let longest = 0;
  let most = -1;
  let middle = 0;
  for (let axis = 0; axis < 3; axis++) {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let i = 3 * from + axis; i < 3 * to; i += 3) {
      const value = middles[i]!;
      if (value < low) low = value;
      if (value > high) high = value;
    }
    if (high - low > most) {
      most = high - low;
      middle = (low + high) / 2;
      longest = axis;
    }
  }
  let near = from;
  let far = to - 1;
  while (near <= far) {
    if (middles[3 * near + longest]! < middle) near++;
    else if (middles[3 * far + longest]! >= middle) far--;
    else swap(order, middles, near++, far--);
  }
  // all middles at one place
  return near === from || near === to ? (from + to) >> 1 : near;
}

function swap(order: Uint32Array, middles: Float32Array, one: number, other: number): void {
  const facet = order[one]!;
  order[one] = order[other]!;
  order[other] = facet;
  for (let axis = 0; axis < 3; axis++) {
    const value = middles[3 * one + axis]!;
    middles[3 * one + axis] = middles[3 * other + axis]!;
    middles[3 * other + axis] = value;
  }
}

function inOrder(t: Uint32Array, order: Uint32Array): Uint32Array {
  const corners = new Uint32Array(t.length);
  for (let i = 0; i < order.length; i++) {
    const at = 3 * order[i]!;
    corners[3 * i] = t[at]!;
    corners[3 * i + 1] = t[at + 1]!;
    corners[3 * i + 2] = t[at + 2]!;
  }
  return corners;
}

/** The boxes of leaves from their facets, those of inner nodes from their halves. */
function boxesOf(
  { start, size, corners }: Pick<BoxTree, 'start' | 'size' | 'corners'>,
  nodes: number,
  p: Float64Array,
): Float64Array {
  const boxes = new Float64Array(6 * nodes);
  for (let node = nodes - 1; node >= 0; node--) {
    const first = size[node] === 0 ? 6 * (node + 1) : 0;
    const second = 6 * start[node]!;
    const from = 3 * start[node]!;
    const to = from + 3 * size[node]!;
    for (let axis = 0; axis < 3; axis++) {
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      if (from === to) {
        low = Math.min(boxes[first + axis]!, boxes[second + axis]!);
        high = Math.max(boxes[first + 3 + axis]!, boxes[second + 3 + axis]!);
      }
      for (let i = from; i < to; i++) {
        const value = p[3 * corners[i]! + axis]!;
        if (value < low) low = value;
        if (value > high) high = value;
      }
      boxes[6 * node + axis] = low;
      boxes[6 * node + 3 + axis] = high;
    }
  }
  return boxes;
}
