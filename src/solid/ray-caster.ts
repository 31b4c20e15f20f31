import { boxTree, DEEPEST } from './box-tree.js';
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

/** Rays that pass a facet's side by this share of it still meet it, so that none slips between two. */
const SIDE = 1e-7;

/**
 * Keeps the facets of a mesh in a tree of boxes, so that a ray asks only those whose boxes it crosses.
 *
 * @param mesh  any triangles  [mm]
 * @returns what answers rays
 * @example rayCaster(cube).first([0, 0, -5, 0, 0, 1], 0)?.distance // 4.5
 */
export function rayCaster(mesh: Mesh): RayCaster {
  const { order, corners, start: starts, size: sizes, boxes } = boxTree(mesh);
  const facets = spannedFacets(mesh.positions, corners);
  const stack = new Int32Array(DEEPEST + 1);
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
      // where a box's sides stand that the ray meets first; the others stand three places on, or before
      const x0 = ix < 0 ? 3 : 0;
      const y0 = iy < 0 ? 4 : 1;
      const z0 = iz < 0 ? 5 : 2;
      const x1 = 3 - x0;
      const y1 = 5 - y0;
      const z1 = 7 - z0;
      // a box that the ray leaves sooner holds nothing that counts
      const soonest = least / 2;
      let best = most;
      let found = -1;
      let depth = 0;
      stack[depth++] = 0;
      while (depth > 0) {
        const node = stack[--depth]!;
        const at = 6 * node;
        // a ray within the plane of a side gives 0·∞, which no comparison takes for a miss
        let near = (boxes[at + x0]! - x) * ix;
        let far = (boxes[at + x1]! - x) * ix;
        const nearY = (boxes[at + y0]! - y) * iy;
        const farY = (boxes[at + y1]! - y) * iy;
        if (!(near >= nearY)) near = nearY;
        if (!(far <= farY)) far = farY;
        const nearZ = (boxes[at + z0]! - z) * iz;
        const farZ = (boxes[at + z1]! - z) * iz;
        if (nearZ > near) near = nearZ;
        if (farZ < far) far = farZ;
        if (near > far + 1e-9 || near >= best || far < soonest) continue;
        const start = starts[node]!;
        const size = sizes[node]!;
        if (size === 0) {
          stack[depth++] = start;
          stack[depth++] = node + 1;
          continue;
        }
        for (let i = start; i < start + size; i++) {
          const distance = meeting(facets, 9 * i, x, y, z, dx, dy, dz);
          if (distance > least && distance < best) {
            best = distance;
            found = i;
          }
        }
      }
      return found < 0 ? undefined : { facet: order[found]!, distance: best };
    },
  };
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
