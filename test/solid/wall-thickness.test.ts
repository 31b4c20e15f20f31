import { beforeAll, describe, expect, it } from 'vitest';
import { facetGraph } from '../../src/solid/facet-graph.js';
import { facetRoles } from '../../src/solid/facet-roles.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { hexagonOutline, rectangleOutline } from '../../src/solid/outline.js';
import { rayCaster } from '../../src/solid/ray-caster.js';
import { cylinder, type Shape } from '../../src/solid/recipe.js';
import { thinnestWall } from '../../src/solid/wall-thickness.js';
import { sharedKernel } from '../support/shared-kernel.js';
import { nutThread, TR8X2 } from './examples.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

function wallOf(shape: Shape) {
  const mesh = facetGraph(kernel.fuse(shape));
  return thinnestWall(mesh, facetRoles(mesh, shape), rayCaster(mesh));
}

const round = (radius: number, from: number, to: number, circumscribed = false) =>
  cylinder({ radius, sides: 96, circumscribed, from, to });
const moved = (shape: Shape, x: number, y = 0): Shape => ({ kind: 'moved', by: [x, y, 0], shape });
const slab = (x: number, y: number, to: number): Shape => ({
  kind: 'prism',
  outlines: [rectangleOutline({ size: [x, y] })],
  from: 0,
  to,
});

describe('the thinnest wall', () => {
  it('of a tube is its wall', () => {
    const wall = wallOf({ kind: 'difference', of: [round(10, 0, 30), round(8, -1, 31, true)] })!;
    expect(wall.thickness).toBeCloseTo(2, 1);
    expect(Math.hypot(wall.at[0], wall.at[1])).toBeGreaterThan(7.9);
  });

  it('of a plate is its thickness, or what is left under a pocket', () => {
    expect(wallOf(slab(40, 30, 6))!.thickness).toBeCloseTo(6, 5);
    const sunk: Shape = { kind: 'difference', of: [slab(40, 30, 6), round(5, 4.8, 7)] };
    expect(wallOf(sunk)!.thickness).toBeCloseTo(4.8, 5);
  });

  it('lies between two holes, and between a hole and the edge', () => {
    const two: Shape = {
      kind: 'difference',
      of: [slab(60, 40, 20), moved(round(5, -1, 21, true), -6), moved(round(4, -1, 21, true), 4.3)],
    };
    // 10.3 mm from axis to axis, less 5 and 4
    expect(wallOf(two)!.thickness).toBeCloseTo(1.3, 1);
    const edge: Shape = { kind: 'difference', of: [slab(60, 40, 20), moved(round(5, -1, 21, true), 0, 13.6)] };
    expect(wallOf(edge)!.thickness).toBeCloseTo(1.4, 2);
  });

  it('lies at the corner of a pocket, which no facet looks along', () => {
    // hexagon of 10 mm across flats, its corner on +X at 5.7735 mm; the side of the slab stands at 7 mm
    const shape: Shape = {
      kind: 'difference',
      of: [slab(14, 60, 30), { kind: 'prism', outlines: [hexagonOutline({ acrossFlats: 10 })], from: -1, to: 31 }],
    };
    expect(wallOf(shape)!.thickness).toBeCloseTo(7 - 10 / Math.sqrt(3), 2);
  });

  it('lies straight beyond the corner of a slot, between the ways that its sides look', () => {
    // a slot 15 mm wide to x = 18 in a bar of 28 mm radius: what is left beyond its corner is 28 − √(18² + 7.5²)
    const slot: Shape = {
      kind: 'prism',
      outlines: [
        [
          [-60, -7.5],
          [18, -7.5],
          [18, 7.5],
          [-60, 7.5],
        ],
      ],
      from: -1,
      to: 31,
    };
    const wall = wallOf({ kind: 'difference', of: [round(28, 0, 30), slot] })!;
    expect(Math.abs(wall.thickness - (28 - Math.hypot(18, 7.5)))).toBeLessThan(0.03);
  });

  it('is no edge in which two faces meet, however sharp', () => {
    const wedge: Shape = {
      kind: 'prism',
      outlines: [
        [
          [0, 0],
          [30, 0],
          [30, 12],
        ],
      ],
      from: 0,
      to: 25,
    };
    expect(wallOf(wedge)?.thickness ?? 25).toBeGreaterThan(9);
  });

  it('of a nut is left by the roots of its thread, not by where the thread ends', () => {
    const nut: Shape = {
      kind: 'difference',
      of: [round(6.5, 0, 13.3), { kind: 'thread', thread: nutThread(TR8X2, -1, 14.3) }],
    };
    const root = Math.max(...nutThread(TR8X2, 0, 1).ridge.map(([, radius]) => radius));
    expect(Math.abs(wallOf(nut)!.thickness - (6.5 - root))).toBeLessThan(0.02);
  });

  /** A tube of 2 mm with a cone from its lower mouth inwards. */
  const ledIn = (cone: readonly (readonly [number, number])[], broken: readonly number[]): Shape => ({
    kind: 'difference',
    of: [
      round(10, 0, 20),
      round(8, -1, 21, true),
      { kind: 'lathe', sides: 96, circumscribed: true, contour: cone, broken },
    ],
  });

  it('is no bevel: a lead-in of 45° may come near the outside', () => {
    const cone = [
      [10, -1],
      [7, 2],
    ] as const;
    expect(wallOf(ledIn(cone, [0]))!.thickness).toBeCloseTo(2, 1);
  });

  it.each([[[0]], [[]]])('is left by a steep lead-in at its mouth, called a broken edge or not: %j', (broken) => {
    // 2.5 in 10: at the mouth the radius is 9.25, and 0.75 mm are left
    const cone = [
      [9.5, -1],
      [7, 9],
    ] as const;
    expect(Math.abs(wallOf(ledIn(cone, broken))!.thickness - 0.75)).toBeLessThan(0.05);
  });
});
