import type { Mesh } from './mesh.js';
import { spannedFacets } from './spanned-facets.js';

/** Where a ray meets a mesh. */
export interface RayHit {
  readonly facet: number;
  /** from where the ray starts, mm for a direction of length 1 */
  readonly distance: number;
}

/** A ray's start and direction. */
export type Ray = readonly [x: number, y: number, z: number, dx: number, dy: number, dz: number];

/** Answers which facet a ray meets first. */
export interface RayCaster {
  /**
   * @param ray   start and direction
   * @param least hits nearer than this are passed by: those of the facet that a ray starts from  [mm]
   * @param most  hits farther than this are of no interest                                      [mm]
   */
  first(ray: Ray, least: number, most?: number): RayHit | undefined;
}

const LEAF = 4;
/** Rays that pass a facet's side by this share of it still meet it, so that none slips between two. */
const SIDE = 1e-7;

/**
 * Sorts the facets of a mesh into a tree of boxes, halved at the middle of the longest side, so that a ray asks only
 * those whose boxes it crosses.
 *
 * @param mesh  any triangles  [mm]
 * @returns what answers rays
 * @example rayCaster(cube).first([0, 0, -5, 0, 0, 1], 0)?.distance // 4.5
 */
export function rayCaster({ positions: p, triangles: t }: Mesh): RayCaster {
  const count = t.length / 3;
  const order = new Uint32Array(count);
  const middles = new Float32Array(3 * count);
  for (let facet = 0; facet < count; facet++) {
    order[facet] = facet;
    for (let axis = 0; axis < 3; axis++) {
      const at = 3 * facet;
      middles[at + axis] = (p[3 * t[at]! + axis]! + p[3 * t[at + 1]! + axis]! + p[3 * t[at + 2]! + axis]!) / 3;
    }
  }
  const nodes = boxTree(order, middles);
  const boxes = boxesOf(nodes, order, p, t);
  const facets = spannedFacets(p, t);
  const stack = new Int32Array(64);
  return {
    first: (ray, least, most = Number.POSITIVE_INFINITY) => {
      const x = ray[0];
      const y = ray[1];
      const z = ray[2];
      const dx = ray[3];
      const dy = ray[4];
      const dz = ray[5];
      const ix = 1 / dx;
      const iy = 1 / dy;
      const iz = 1 / dz;
      let best = most;
      let found = -1;
      let depth = 0;
      stack[depth++] = 0;
      while (depth > 0) {
        const node = stack[--depth]!;
        if (!(entry(boxes, 6 * node, x, y, z, ix, iy, iz) < best)) continue;
        const start = nodes.start[node]!;
        const size = nodes.size[node]!;
        if (size === 0) {
          stack[depth++] = start;
          stack[depth++] = node + 1;
          continue;
        }
        for (let i = start; i < start + size; i++) {
          const distance = meeting(facets, 9 * order[i]!, x, y, z, dx, dy, dz);
          if (distance > least && distance < best) {
            best = distance;
            found = order[i]!;
          }
        }
      }
      return found < 0 ? undefined : { facet: found, distance: best };
    },
  };
}

/** Nodes in the order in which they are met: the first half of an inner one follows it, `start` names the other half. */
interface Tree {
  /** of a leaf its first place in the order, of an inner node its second half */
  readonly start: Uint32Array;
  /** facets of a leaf, 0 for an inner node */
  readonly size: Uint8Array;
  readonly count: number;
}

function boxTree(order: Uint32Array, middles: Float32Array): Tree {
  const start = new Uint32Array(2 * order.length + 1);
  const size = new Uint8Array(2 * order.length + 1);
  let count = 0;
  const split = (from: number, to: number): void => {
    const node = count++;
    if (to - from <= LEAF) {
      start[node] = from;
      size[node] = to - from;
      return;
    }
    const axis = longestAxis(order, middles, from, to);
    const half = (from + to) >> 1;
    select(order, middles, axis, from, to - 1, half);
    split(from, half);
    start[node] = count;
    split(half, to);
  };
  split(0, order.length);
  return { start, size, count };
}

function longestAxis(order: Uint32Array, middles: Float32Array, from: number, to: number): number {
  let longest = 0;
  let most = -1;
  for (let axis = 0; axis < 3; axis++) {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = from; i < to; i++) {
      const value = middles[3 * order[i]! + axis]!;
      if (value < low) low = value;
      if (value > high) high = value;
    }
    if (high - low > most) {
      most = high - low;
      longest = axis;
    }
  }
  return longest;
}

/** Puts the facet that belongs at a place there, lower ones before it and higher ones after it. */
function select(order: Uint32Array, middles: Float32Array, axis: number, low: number, high: number, place: number) {
  let [left, right] = [low, high];
  while (right > left) {
    const pivot = middles[3 * order[(left + right) >> 1]! + axis]!;
    let [i, j] = [left, right];
    while (i <= j) {
      while (middles[3 * order[i]! + axis]! < pivot) i++;
      while (middles[3 * order[j]! + axis]! > pivot) j--;
      if (i <= j) {
        const swapped = order[i]!;
        order[i++] = order[j]!;
        order[j--] = swapped;
      }
    }
    if (place <= j) right = j;
    else if (place >= i) left = i;
    else return;
  }
}

/** Least and most x, y, z of each node, inner ones from their halves. */
function boxesOf({ start, size, count }: Tree, order: Uint32Array, p: Float64Array, t: Uint32Array): Float64Array {
  const boxes = new Float64Array(6 * count);
  for (let node = count - 1; node >= 0; node--) {
    const at = 6 * node;
    boxes.fill(Number.POSITIVE_INFINITY, at, at + 3);
    boxes.fill(Number.NEGATIVE_INFINITY, at + 3, at + 6);
    if (size[node] === 0) {
      for (const half of [node + 1, start[node]!]) {
        for (let axis = 0; axis < 3; axis++) {
          boxes[at + axis] = Math.min(boxes[at + axis]!, boxes[6 * half + axis]!);
          boxes[at + 3 + axis] = Math.max(boxes[at + 3 + axis]!, boxes[6 * half + 3 + axis]!);
        }
      }
      continue;
    }
    for (let i = start[node]!; i < start[node]! + size[node]!; i++) {
      for (let corner = 0; corner < 3; corner++) {
        const from = 3 * t[3 * order[i]! + corner]!;
        for (let axis = 0; axis < 3; axis++) {
          const value = p[from + axis]!;
          if (value < boxes[at + axis]!) boxes[at + axis] = value;
          if (value > boxes[at + 3 + axis]!) boxes[at + 3 + axis] = value;
        }
      }
    }
  }
  return boxes;
}

/** Distance at which a ray enters a box; beyond everything where it misses. */
function entry(
  boxes: Float64Array,
  at: number,
  x: number,
  y: number,
  z: number,
  ix: number,
  iy: number,
  iz: number,
): number {
  const x0 = (boxes[at]! - x) * ix;
  const x1 = (boxes[at + 3]! - x) * ix;
  const y0 = (boxes[at + 1]! - y) * iy;
  const y1 = (boxes[at + 4]! - y) * iy;
  const z0 = (boxes[at + 2]! - z) * iz;
  const z1 = (boxes[at + 5]! - z) * iz;
  // a ray within the plane of a side gives 0·∞, which no comparison below takes for a miss
  const near = Math.max(Math.min(x0, x1), Math.min(y0, y1), Math.min(z0, z1), 0);
  const far = Math.min(Math.max(x0, x1), Math.max(y0, y1), Math.max(z0, z1));
  return near > far + 1e-9 ? Number.POSITIVE_INFINITY : Number.isNaN(near) ? 0 : near;
}

/** Distance at which a ray meets the facet whose corner and sides begin at an index; −1 where it does not. */
function meeting(
  f: Float64Array,
  at: number,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
): number {
  const ux = f[at + 3]!;
  const uy = f[at + 4]!;
  const uz = f[at + 5]!;
  const vx = f[at + 6]!;
  const vy = f[at + 7]!;
  const vz = f[at + 8]!;
  const nx = dy * vz - dz * vy;
  const ny = dz * vx - dx * vz;
  const nz = dx * vy - dy * vx;
  const turn = ux * nx + uy * ny + uz * nz;
  if (turn === 0) return -1;
  const wx = x - f[at]!;
  const wy = y - f[at + 1]!;
  const wz = z - f[at + 2]!;
  const first = (wx * nx + wy * ny + wz * nz) / turn;
  if (first < -SIDE || first > 1 + SIDE) return -1;
  const qx = wy * uz - wz * uy;
  const qy = wz * ux - wx * uz;
  const qz = wx * uy - wy * ux;
  const second = (dx * qx + dy * qy + dz * qz) / turn;
  if (second < -SIDE || first + second > 1 + SIDE) return -1;
  return (vx * qx + vy * qy + vz * qz) / turn;
}
