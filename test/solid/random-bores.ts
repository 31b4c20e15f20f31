import fc from 'fast-check';
import { expect } from 'vitest';
import type { Kernel } from '../../src/solid/kernel.js';
import { measureMesh } from '../../src/solid/measure.js';
import type { Mesh, Placement } from '../../src/solid/mesh.js';
import { cylinder, type Lathe, type Shape } from '../../src/solid/recipe.js';
import { narrowest, nutThread, type ThreadFigures, widest } from './examples.js';
import { randomThread } from './random-nuts.js';

/** How far cutters stand out, mm. */
const OVER = 1;

export interface Bored {
  readonly figures: ThreadFigures;
  readonly length: number;
  readonly leadIn: number;
  readonly at?: Placement;
}

export function boreOf({ figures, length, leadIn, at }: Bored): Shape {
  const thread = nutThread(figures, -OVER, length + OVER);
  const [mouth, inner] = [widest(thread) + leadIn, narrowest(thread) - 0.2];
  const cone = (contour: Lathe['contour']): Shape => ({
    kind: 'lathe',
    sides: figures.columns,
    circumscribed: true,
    contour,
  });
  const bore: Shape = {
    kind: 'union',
    of: [
      { kind: 'thread', thread },
      cone([
        [mouth + OVER, -OVER],
        [inner, mouth - inner],
      ]),
      cone([
        [inner, length - mouth + inner],
        [mouth + OVER, length + OVER],
      ]),
    ],
  };
  return at ? { kind: 'moved', shape: bore, ...at } : bore;
}

export function blockFor({ figures, length, leadIn }: Bored, at: readonly [number, number, number] = [0, 0, 0]): Shape {
  const radius = widest(nutThread(figures, 0, length)) + leadIn + 2;
  return {
    kind: 'moved',
    shape: cylinder({ radius, sides: 96, circumscribed: false, from: 0, to: length }),
    by: at,
  };
}

/** The same solid by the kernel alone: nothing is put in by hand within what is moved. */
export function byKernel(kernel: Kernel, shape: Shape): Mesh {
  return kernel.fuse({ kind: 'moved', shape, by: [0, 0, 0] });
}

/** Whether two meshes have other corners; the kernel's order hangs on how a recipe is nested. */
export function isByHand(mesh: Mesh, other: Mesh): boolean {
  const [mine, its] = [mesh.positions.slice().sort(), other.positions.slice().sort()];
  return mine.length !== its.length || mine.some((x, i) => x !== its[i]);
}

/** Bores whose lead-ins do not meet. */
export const randomBore = fc
  .record({
    figures: randomThread,
    room: fc.double({ min: 1.1, max: 6, noNaN: true }),
    leadIn: fc.double({ min: 0.05, max: 1.5, noNaN: true }),
  })
  .map(({ figures, room, leadIn }): Bored => {
    const thread = nutThread(figures, 0, 1);
    const cone = widest(thread) + leadIn - narrowest(thread) + 0.2;
    return { figures, leadIn, length: Math.max(2 * cone * room, 1.5 * figures.pitch) };
  });

/** Holds a bore that was put in by hand against the kernel's own: the same solid, with no more facets. */
export function holdAgainstKernel(kernel: Kernel, bored: Bored): void {
  const wasByHand = holdShapeAgainstKernel(kernel, { kind: 'difference', of: [blockFor(bored), boreOf(bored)] });
  // a flank that lies along a lead-in is left to the kernel
  if (bored.figures.flankAngle < 44) expect(wasByHand).toBe(true);
}

/** The same of any body; tells whether anything of it was put in by hand. */
export function holdShapeAgainstKernel(kernel: Kernel, shape: Shape, told = ''): boolean {
  const [mine, its] = [kernel.fuse(shape), byKernel(kernel, shape)];
  const [made, cut] = [measureMesh(mine), measureMesh(its)];
  expect(made, told).toMatchObject({ openEdges: 0, shells: 1, repeatedVertexFacets: 0, bounds: cut.bounds });
  expect(made.leastFacetHeight, told).toBeGreaterThan(1e-5);
  expect(Math.abs(made.volume / cut.volume - 1), told).toBeLessThan(1e-5);
  expect(Math.abs(made.area / cut.area - 1), told).toBeLessThan(1e-5);
  expect(mine.triangles.length, told).toBeLessThanOrEqual(its.triangles.length);
  return isByHand(mine, its);
}
