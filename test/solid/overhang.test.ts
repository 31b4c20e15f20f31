import { beforeAll, describe, expect, it } from 'vitest';
import { facetGraph } from '../../src/solid/facet-graph.js';
import { facetRoles } from '../../src/solid/facet-roles.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { circleOutline, polygonArea, rectangleOutline } from '../../src/solid/outline.js';
import { ceilingsOf } from '../../src/solid/overhang.js';
import { cylinder, type Shape } from '../../src/solid/recipe.js';
import { sharedKernel } from '../support/shared-kernel.js';
import { nutThread, TR8X2 } from './examples.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

function ceilings(shape: Shape, turnOver = false) {
  const mesh = facetGraph(kernel.fuse(shape));
  return ceilingsOf(mesh, facetRoles(mesh, shape), { turnOver, layer: 0.2 });
}

const SIDES = 48;
const hole = (radius: number, from: number, to: number) =>
  cylinder({ radius, sides: SIDES, circumscribed: true, from, to });
const slab: Shape = { kind: 'prism', outlines: [rectangleOutline({ size: [40, 30] })], from: 0, to: 10 };
const disc = (radius: number) => polygonArea(circleOutline({ radius, sides: SIDES, circumscribed: true }));

describe('ceilings', () => {
  it('of a counterbore on the bed are a ring that hangs', () => {
    const shape: Shape = { kind: 'difference', of: [slab, hole(2.25, -1, 11), hole(4, -1, 4)] };
    const [ring, ...others] = ceilings(shape);
    expect(others).toEqual([]);
    expect(ring!.area).toBeCloseTo(disc(4) - disc(2.25), 3);
    expect(ring!.height).toBeCloseTo(4, 5);
    expect(ring!.bridge).toBeUndefined();
  });

  it('of the same turned over are none', () => {
    expect(ceilings({ kind: 'difference', of: [slab, hole(2.25, -1, 11), hole(4, -1, 4)] }, true)).toEqual([]);
  });

  it('of a blind hole are bridged across its diameter', () => {
    const [roof] = ceilings({ kind: 'difference', of: [slab, hole(4, -1, 4)] });
    expect(roof!.area).toBeCloseTo(disc(4), 3);
    expect(roof!.bridge).toBeGreaterThan(7.7);
    expect(roof!.bridge).toBeLessThan(8.1);
  });

  it('of a channel are bridged across it, though both its ends are open', () => {
    const channel: Shape = { kind: 'prism', outlines: [rectangleOutline({ size: [50, 6] })], from: -1, to: 3 };
    const [roof] = ceilings({ kind: 'difference', of: [slab, channel] });
    expect(roof!.area).toBeCloseTo(240, 3);
    expect(roof!.bridge).toBeCloseTo(6, 5);
  });

  it('of a ledge hang, however wide it is held', () => {
    const shape: Shape = {
      kind: 'union',
      of: [slab, { kind: 'prism', outlines: [rectangleOutline({ size: [8, 30], center: [22, 0] })], from: 6, to: 10 }],
    };
    const [ledge] = ceilings(shape);
    expect(ledge!.area).toBeCloseTo(6 * 30, 3);
    expect(ledge!.bridge).toBeUndefined();
  });

  it('begin past 45° from the vertical', () => {
    const cone = (reach: number): Shape => ({
      kind: 'lathe',
      sides: SIDES,
      circumscribed: false,
      contour: [
        [5, 0],
        [5, 2],
        [5 + reach, 6],
        [5 + reach, 8],
      ],
    });
    expect(ceilings(cone(4))).toEqual([]);
    // 4.3 mm out on 4 mm up: 47°
    expect(ceilings(cone(4.3))).toHaveLength(1);
  });

  it('of threads are left to their own check', () => {
    const nut: Shape = {
      kind: 'difference',
      of: [
        cylinder({ radius: 8, sides: 96, circumscribed: false, from: 0, to: 12 }),
        { kind: 'thread', thread: nutThread(TR8X2, -1, 13) },
      ],
    };
    expect(ceilings(nut).filter(({ area }) => area > 0.05)).toEqual([]);
  });
});

describe('a ledge', () => {
  it('of half a millimetre prints, a wider one does not', () => {
    const ring = (radius: number): Shape => ({ kind: 'difference', of: [slab, hole(3, -1, 11), hole(radius, -1, 4)] });
    expect(ceilings(ring(3.4))[0]!.bridge).toBeLessThan(0.5);
    expect(ceilings(ring(3.7))[0]!.bridge).toBeUndefined();
  });
});
