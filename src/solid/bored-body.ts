import { isHeavy, parts } from './cutters.js';
import {
  type Build,
  columnMajor,
  type Keep,
  meshOf,
  type Solid,
  type SolidMesh,
  type SolidModule,
} from './kernel-objects.js';
import type { Mesh } from './mesh.js';
import type { Shape } from './recipe.js';
import { plugVolume, type StandingBore, standingBore, stitched, type Wall, wallOf } from './stitch-bore.js';

/** Share of a plug's room that may be missing from a body by rounding alone. */
const WHOLE = 1e-5;

/**
 * A body whose heavy cutters are threads with a lead-in at either end: bored with plain plugs, the threads put in by
 * hand. (A thread costs the kernel half of a body.)
 *
 * @returns undefined where a cutter is no bore of that kind, or anything else is cut where a thread runs
 */
export function boredBody(module: SolidModule, shape: Shape, build: Build, keep: Keep): Mesh | undefined {
  if (shape.kind === 'feature') return boredBody(module, shape.shape, build, keep);
  if (shape.kind !== 'difference') return undefined;
  const [first, ...cutters] = shape.of;
  const bores = cutters.flatMap((cutter) => standingBore(cutter) ?? []);
  if (!first || bores.length === 0) return undefined;
  const others = cutters.filter((cutter) => !standingBore(cutter));
  if (others.flatMap(parts).some(isHeavy)) return undefined;
  const cuts = others.flatMap(parts);
  const plugs = bores.map(({ plug }) => build(plug));
  const placed = plugs.map((plug, i) =>
    bores[i]!.moves.reduce((at, move) => keep(at.transform(columnMajor(move))), plug),
  );
  const bored = keep(module.Manifold.difference([...[first, ...cuts].map(build), ...placed]));
  const left = bored.getMesh();
  const mesh = meshOf(bored, left);
  const walls: [StandingBore, Wall][] = [];
  for (const [i, bore] of bores.entries()) {
    const wall = wallOf(mesh, facetsFrom(left, plugs[i]!.getMesh().runOriginalID[0]!), bore);
    if (!wall) return undefined;
    walls.push([bore, wall]);
  }
  if (isHollow(first) || cuts.some((cut) => placed.some((plug) => overlap(build(cut), plug)))) {
    const body = keep(module.Manifold.difference([first, ...cuts].map(build)));
    const taken = walls.reduce((sum, [bore, { mouths }]) => sum + plugVolume(bore, mouths), 0);
    // what is missing was cut out of the plug's room by something else
    if (Math.abs(body.volume() - bored.volume() - taken) > WHOLE * taken) return undefined;
  }
  return stitched(mesh, walls, (polygons) => module.triangulate(polygons, -1));
}

/** Whether anything is cut within a shape. */
function isHollow(shape: Shape): boolean {
  if (shape.kind === 'moved' || shape.kind === 'feature') return isHollow(shape.shape);
  return shape.kind === 'union' ? shape.of.some(isHollow) : shape.kind === 'difference' || shape.kind === 'mesh';
}

/** Whether two solids may meet, seen from above. */
function overlap(a: Solid, b: Solid): boolean {
  const [one, other] = [a.boundingBox(), b.boundingBox()];
  return [0, 1].every((axis) => one.min[axis]! < other.max[axis]! && other.min[axis]! < one.max[axis]!);
}

function facetsFrom({ runIndex, runOriginalID }: SolidMesh, original: number): number[] {
  const facets: number[] = [];
  for (const [run, id] of runOriginalID.entries()) {
    if (id !== original) continue;
    for (let i = runIndex[run]!; i < runIndex[run + 1]!; i += 3) facets.push(i / 3);
  }
  return facets;
}
