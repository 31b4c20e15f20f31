import { fault } from '../units/faults.js';
import { boredBody } from './bored-body.js';
import { loftConvex } from './convex-loft.js';
import { isHeavy, parts } from './cutters.js';
import { type Build, columnMajor, type Keep, meshOf, type Solid, type SolidModule, solidOf } from './kernel-objects.js';
import { latheMesh } from './lathe-mesh.js';
import type { Mesh, Placement, TaggedMesh } from './mesh.js';
import type { Outline } from './outline.js';
import { placedSurfaces } from './placed-surfaces.js';
import { type PlaneWork, prismMesh, strokesMesh } from './prism-mesh.js';
import type { Feature, Shape } from './recipe.js';
import { type Leaf, type Surface, surfacesOf, threadCore } from './surfaces.js';
import { sweepThread } from './thread-sweep.js';
import { drawnBore } from './threaded-bore.js';
import { uprightBody } from './upright-body.js';
import { weld } from './weld.js';

/** Where the second of two solids stands when they are tried together: turned about +Z, then shifted. */
export type Pose = Pick<Placement, 'by' | 'turn'>;

/** The solid operations. One kernel serves one thread; it keeps nothing between calls. */
export interface Kernel {
  /**
   * Evaluates a recipe to one closed mesh of float32 values, cleaned of repeated corners and slivers.
   *
   * @throws InputError  a shape of the recipe is not a solid
   */
  fuse(shape: Shape): Mesh;
  /**
   * Evaluates recipes to closed meshes as they come, threads as plain cylinders, whose facets know the surface of the
   * recipe that they lie on: for drawing, not for files. Every moved shape has surfaces of its own.
   *
   * @throws InputError  a shape of a recipe is not a solid
   */
  surfaced(shapes: readonly Shape[]): SurfacedMesh[];
  /** Volume that `a` and the moved `b` have in common, for each pose, mm³; exactly 0 where they do not meet. */
  commonVolumes(a: Shape, b: Shape, poses: readonly Pose[]): number[];
  /** Volume of a shape, mm³. */
  volume(shape: Shape): number;
  /** Outlines that may overlap, joined in their plane: outer loops counter-clockwise, holes clockwise. */
  joined(outlines: readonly Outline[]): Outline[];
}

/** How the kernel is loaded. */
export interface KernelOptions {
  /**
   * the bytes of `manifold-3d/manifold.wasm`, where they cannot be found beside the script: in a bundle, a worker made
   * from a blob, a page that is one file
   */
  readonly wasm?: ArrayBuffer | Uint8Array;
}

/**
 * Loads the boolean kernel.
 *
 * @param options its bytes, where it cannot find them by itself
 * @returns a kernel for this thread; takes about 40 ms
 * @throws InputError bytes that are no WebAssembly
 * @example (await createKernel()).volume({ kind: 'lathe', sides: 4, circumscribed: false, contour: [[1, 0], [1, 3]] }) // 6
 */
export async function createKernel({ wasm }: KernelOptions = {}): Promise<Kernel> {
  if (wasm) requireWasm(wasm);
  const load = (await import('manifold-3d')).default as (given: object) => Promise<SolidModule>;
  // with its bytes in hand it still asks where they lie, which a bundle cannot say
  const module = await load(wasm ? { wasmBinary: wasm, locateFile: (name: string) => name } : {});
  module.setup();
  return {
    fuse: (shape) =>
      inScope(module, (build, keep) =>
        weld(uprightBody(shape, planeWork(module)) ?? boredBody(module, shape, build, keep) ?? meshOf(build(shape))),
      ),
    surfaced: (shapes) => surfacedMeshes(module, shapes),
    volume: (shape) => inScope(module, (build) => build(shape).volume()),
    joined: (outlines) =>
      joined(
        module,
        outlines.map((outline) => outline.map(([x, y]) => [x, y])),
      ),
    commonVolumes: (a, b, poses) =>
      inScope(module, (build, keep) => {
        const [still, moving] = [build(a), build(b)];
        return poses.map((pose) => {
          const moved = keep(moving.transform(columnMajor(pose)));
          return keep(still.intersect(moved)).volume();
        });
      }),
  };
}

const WASM = '\0asm';

function requireWasm(bytes: ArrayBuffer | Uint8Array): void {
  const view = bytes instanceof Uint8Array ? bytes : new Uint8Array(bytes);
  const start = String.fromCharCode(...view.subarray(0, 4));
  if (start !== WASM)
    throw fault('wasm', `${bytes.byteLength} bytes`, 'must be the bytes of manifold-3d/manifold.wasm');
}

/** A mesh whose tags count its surfaces. */
export interface SurfacedMesh extends TaggedMesh {
  readonly surfaces: readonly Surface[];
}

/** Runs work on kernel objects and frees every one of them; a shape used twice is built once. */
function inScope<T>(module: SolidModule, work: (build: Build, keep: Keep) => T): T {
  const kept: Solid[] = [];
  const built = new Map<Shape, Solid>();
  const keep: Keep = (solid) => {
    kept.push(solid);
    return solid;
  };
  const build: Build = (shape) => {
    if (shape.kind === 'feature') return build(shape.shape);
    const known = built.get(shape);
    if (known !== undefined) return known;
    const solid = keep(evaluate(module, shape, build, keep));
    built.set(shape, solid);
    return solid;
  };
  try {
    return work(build, keep);
  } finally {
    for (const solid of kept) solid.delete();
  }
}

function evaluate(module: SolidModule, shape: Exclude<Shape, Feature>, build: Build, keep: Keep): Solid {
  switch (shape.kind) {
    case 'moved':
      return build(shape.shape).transform(columnMajor(shape));
    case 'difference':
      return difference(module, together(shape), build, keep);
    case 'union':
    case 'intersection':
      return module.Manifold[shape.kind](together(shape).map(build));
    default:
      return solidOf(module, leafMesh(module, shape));
  }
}

function together({ kind, of }: Extract<Shape, { of: unknown }>): readonly Shape[] {
  if (of.length === 0) throw fault('of', kind, 'must name at least one shape');
  return of;
}

function leafMesh(module: SolidModule, leaf: Leaf): Mesh {
  const { join, triangulate } = planeWork(module);
  switch (leaf.kind) {
    case 'prism':
      return prismMesh(leaf, triangulate);
    case 'strokes':
      return strokesMesh(leaf, join, triangulate);
    case 'lathe':
      return latheMesh(leaf);
    case 'thread':
      return sweepThread(leaf.thread);
    case 'loft':
      return loftConvex(leaf.outline, leaf.levels);
    case 'mesh':
      return leaf.mesh;
  }
}

function planeWork(module: SolidModule): PlaneWork {
  return {
    join: (polygons) => joined(module, polygons),
    triangulate: (polygons) => module.triangulate(polygons, -1),
  };
}

function joined(module: SolidModule, polygons: [number, number][][]): [number, number][][] {
  const section = new module.CrossSection(polygons, 'Positive');
  try {
    return section.toPolygons();
  } finally {
    section.delete();
  }
}

/**
 * Builds shapes with a number on every flat facet; what each number means is kept beside. A shape that stands in several
 * places is built once: the kernel tells of each run of facets how it was moved, and its surfaces are moved alike.
 */
function surfacedMeshes(module: SolidModule, shapes: readonly Shape[]): SurfacedMesh[] {
  const kept: Solid[] = [];
  const built = new Map<string | undefined, Map<Shape, Solid>>();
  const surfaces: Surface[] = [];
  const surfaceOf: number[] = [];
  const keep: Keep = (solid) => {
    kept.push(solid);
    return solid;
  };
  const numbered = (leaf: Leaf, feature: string | undefined): Solid => {
    const shape = leaf.kind === 'thread' ? threadCore(leaf.thread) : leaf;
    const mesh = leafMesh(module, shape);
    const { surfaces: own, ofTag } = surfacesOf(shape);
    const [first, number] = [surfaces.length, surfaceOf.length];
    surfaces.push(...own.map((surface) => (feature === undefined ? surface : { ...surface, feature })));
    for (const tag of ofTag) surfaceOf.push(first + tag);
    const tags = 'tags' in mesh ? (mesh.tags as Uint32Array) : new Uint32Array(mesh.triangles.length / 3);
    return solidOf(
      module,
      mesh,
      tags.map((tag) => number + (ofTag.length === 1 ? 0 : tag)),
    );
  };
  const buildAs = (shape: Shape, feature?: string): Solid => {
    if (shape.kind === 'feature') return buildAs(shape.shape, shape.name);
    const ofFeature = built.get(feature) ?? new Map<Shape, Solid>();
    built.set(feature, ofFeature);
    const known = ofFeature.get(shape);
    if (known !== undefined) return known;
    const bore = drawnBore(shape);
    const build: Build = (part) => buildAs(part, feature);
    const solid = keep(
      bore
        ? numbered(bore, feature)
        : 'of' in shape
          ? evaluate(module, withDrawnBores(shape), build, keep)
          : shape.kind === 'moved'
            ? evaluate(module, shape, build, keep)
            : numbered(shape, feature),
    );
    ofFeature.set(shape, solid);
    return solid;
  };
  try {
    return shapes.map((shape) => {
      const solid = buildAs(shape);
      const mesh = solid.getMesh();
      return { ...meshOf(solid, mesh), ...placedSurfaces(mesh, { surfaces, surfaceOf }) };
    });
  } finally {
    for (const solid of kept) solid.delete();
  }
}

/** Threaded bores as they are drawn, so that nothing takes them apart. */
function withDrawnBores<S extends Extract<Shape, { of: unknown }>>(shape: S): S {
  return { ...shape, of: shape.of.map((part) => drawnBore(part) ?? part) };
}

/**
 * The first shape less the others: the light cutters at once, then each thread by itself. (All at once would first
 * unite the cutters, where threads and openings overlap: three times the work. Unions of cutters are taken apart for
 * the same reason.)
 */
function difference(module: SolidModule, [first, ...others]: readonly Shape[], build: Build, keep: Keep): Solid {
  const cutters = others.flatMap(parts);
  const light = cutters.filter((shape) => !isHeavy(shape));
  let rest = module.Manifold.difference([build(first!), ...light.map(build)]);
  for (const shape of cutters.filter(isHeavy)) {
    keep(rest);
    rest = rest.subtract(build(shape));
  }
  return rest;
}
