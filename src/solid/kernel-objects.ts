import { fault } from '../units/faults.js';
import { type Mesh, type Placement, placementMatrix } from './mesh.js';
import type { Shape } from './recipe.js';

/** What is used of the kernel's own objects; they live outside the garbage collector and must be deleted. */
export interface Solid {
  transform(matrix: number[]): Solid;
  intersect(other: Solid): Solid;
  subtract(other: Solid): Solid;
  volume(): number;
  status(): string;
  boundingBox(): { readonly min: readonly number[]; readonly max: readonly number[] };
  getMesh(): SolidMesh;
  delete(): void;
}

/** A solid's mesh as the kernel gives it. */
export interface SolidMesh {
  readonly numProp: number;
  readonly vertProperties: Float32Array;
  readonly triVerts: Uint32Array;
  readonly faceID: Uint32Array;
  /** facets of one original run from `runIndex[i]` to `runIndex[i + 1]` in `triVerts` */
  readonly runIndex: Uint32Array;
  readonly runOriginalID: Uint32Array;
  /** how each run was moved since it was made: 3 × 4 by columns */
  readonly runTransform: Float32Array;
}

/** What is used of the kernel's module. */
export interface SolidModule {
  setup(): void;
  triangulate(polygons: [number, number][][], epsilon: number): [number, number, number][];
  Manifold: {
    /** throws an error with a `code` unless the mesh is closed */
    new (mesh: object): Solid;
    union(solids: Solid[]): Solid;
    difference(solids: Solid[]): Solid;
    intersection(solids: Solid[]): Solid;
  };
  CrossSection: new (
    polygons: [number, number][][],
    fillRule: 'Positive',
  ) => { toPolygons(): [number, number][][]; delete(): void };
  Mesh: new (mesh: {
    numProp: number;
    vertProperties: Float32Array;
    triVerts: Uint32Array;
    faceID?: Uint32Array;
  }) => object;
}

/** Marks a solid to be deleted in the end. */
export type Keep = (solid: Solid) => Solid;
/** Evaluates a shape, each once. */
export type Build = (shape: Shape) => Solid;

/** @throws InputError the mesh is not closed */
export function solidOf(module: SolidModule, { positions, triangles }: Mesh, faceID?: Uint32Array): Solid {
  const mesh = new module.Mesh({
    numProp: 3,
    vertProperties: new Float32Array(positions),
    triVerts: triangles,
    ...(faceID ? { faceID } : {}),
  });
  try {
    return new module.Manifold(mesh);
  } catch (error) {
    if (error instanceof Error && 'code' in error) throw notSolid(error.code);
    throw error;
  }
}

/** @throws InputError the solid came to nothing */
export function meshOf(solid: Solid, mesh = solid.getMesh()): Mesh {
  const status = solid.status();
  if (status !== 'NoError') throw notSolid(status);
  const { numProp, vertProperties, triVerts } = mesh;
  if (numProp !== 3) throw new Error(`kernel gave ${numProp} values a corner instead of 3`);
  return { positions: new Float64Array(vertProperties), triangles: triVerts.slice() };
}

function notSolid(status: unknown) {
  return fault('shape', status, 'must be a closed solid of finite size');
}

/** A placement as the kernel takes it. */
export function columnMajor(placement: Placement): number[] {
  const [xx, xy, xz, x0, yx, yy, yz, y0, zx, zy, zz, z0] = placementMatrix(placement);
  return [xx, yx, zx, 0, xy, yy, zy, 0, xz, yz, zz, 0, x0, y0, z0, 1] as number[];
}
