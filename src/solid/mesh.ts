import { cosd, sind } from './angles.js';

/**
 * A closed surface of triangles. `positions` is [x0,y0,z0, x1,…] in mm; each group of three in `triangles` names a
 * facet's corners, counter-clockwise seen from outside.
 */
export interface Mesh {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}

/** A mesh whose facets know where they come from: one tag a facet. */
export interface TaggedMesh extends Mesh {
  readonly tags: Uint32Array;
}

/** A named mesh of one material: one body, one file. */
export interface Body extends Mesh {
  readonly name: string;
  readonly material: string;
}

/** A move of a solid: first leaned about +Y (+Z goes towards +X), then turned about +Z, then shifted. */
export interface Placement {
  /** shift along x, y and z, mm */
  readonly by?: readonly [number, number, number];
  /** turn about +Z, counter-clockwise seen from +Z, degrees */
  readonly turn?: number;
  /** lean about +Y, degrees; 90 lays +Z onto +X */
  readonly tilt?: number;
}

/**
 * The 3 × 4 matrix of a placement, row by row, exact at 90° steps.
 *
 * @param placement  lean, turn and shift  [degrees, mm]
 * @returns [xx, xy, xz, x0, yx, …] so that x' = xx·x + xy·y + xz·z + x0
 * @example placementMatrix({ turn: 90 }) // [0, -1, 0, 0, 1, 0, 0, 0, 0, 0, 1, 0]
 */
export function placementMatrix({ by = [0, 0, 0], turn = 0, tilt = 0 }: Placement): number[] {
  const [c, s, k, l] = [cosd(turn), sind(turn), cosd(tilt), sind(tilt)];
  return [c * k, -s, c * l, by[0], s * k, c, s * l, by[1], -l, 0, k, by[2]].map((value) => value + 0);
}

/**
 * The matrix of a placement inside another move, by which what it places is moved along.
 *
 * @param matrix     the outer move, 3 × 4, row by row
 * @param placement  the inner one               [degrees, mm]
 * @returns 3 × 4, row by row
 * @example matrixWithin(placementMatrix({ turn: 90 }), { by: [1, 0, 0] }) // [0, -1, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0]
 */
export function matrixWithin(matrix: readonly number[], placement: Placement): number[] {
  const inner = placementMatrix(placement);
  return [0, 4, 8].flatMap((row) =>
    [0, 1, 2, 3].map(
      (column) =>
        matrix[row]! * inner[column]! +
        matrix[row + 1]! * inner[4 + column]! +
        matrix[row + 2]! * inner[8 + column]! +
        (column === 3 ? matrix[row + 3]! : 0),
    ),
  );
}

/**
 * A mesh moved as one.
 *
 * @param mesh       the mesh                    [mm]
 * @param placement  lean, turn and shift        [degrees, mm]
 * @returns a new mesh; facets keep their order
 */
export function place(mesh: Mesh, placement: Placement): Mesh {
  const m = Float64Array.from(placementMatrix(placement));
  const source = mesh.positions;
  const positions = new Float64Array(source.length);
  for (let i = 0; i < source.length; i += 3) {
    for (let row = 0; row < 3; row++) {
      const at = 4 * row;
      positions[i + row] = m[at]! * source[i]! + m[at + 1]! * source[i + 1]! + m[at + 2]! * source[i + 2]! + m[at + 3]!;
    }
  }
  return { positions, triangles: mesh.triangles };
}

/**
 * A mesh mirrored in the plane y = 0, its facets turned over so that they still face outwards: right hand becomes left.
 *
 * @param mesh  the mesh  [mm]
 * @returns a new mesh
 */
export function mirrored(mesh: Mesh): Mesh {
  const positions = mesh.positions.slice();
  for (let i = 1; i < positions.length; i += 3) positions[i] = 0 - positions[i]!;
  const triangles = mesh.triangles.slice();
  for (let i = 0; i < triangles.length; i += 3) {
    triangles[i + 1] = mesh.triangles[i + 2]!;
    triangles[i + 2] = mesh.triangles[i + 1]!;
  }
  return { positions, triangles };
}
