import { describe, expect, it } from 'vitest';
import { clipped } from '../../../src/solid/convex.js';
import { lineVolume } from '../../../src/solid/exact/line-volume.js';
import { type MeantShape, meantShape } from '../../../src/solid/exact/meant-shape.js';
import { hullOutline } from '../../../src/solid/hull-outline.js';
import { circleOutline, rectangleOutline } from '../../../src/solid/outline.js';
import type { Shape } from '../../../src/solid/recipe.js';
import { InputError } from '../../../src/units/faults.js';

const meant = (shape: Shape): MeantShape => meantShape(shape, { threads: 'exact', join: (outlines) => outlines });

const LEVELS = [
  [0, -1],
  [1, 0],
  [6, 0],
] as const;

const SQUARE = rectangleOutline({ size: [10, 10] });

describe('what a recipe means', () => {
  it('turns a circle about its own centre, wherever that lies', () => {
    const outline = circleOutline({ radius: 5, sides: 48, center: [3, -2] });
    const shape = meant({ kind: 'loft', outline, levels: LEVELS });
    expect(shape).toMatchObject({ kind: 'moved', by: [3, -2, 0], shape: { kind: 'revolution' } });
    // a frustum of 4 and 5, and a cylinder
    const { volume, center } = lineVolume(shape);
    expect(volume / (Math.PI * ((16 + 20 + 25) / 3 + 25 * 5))).toBeCloseTo(1, 6);
    expect(center[0]).toBeCloseTo(3, 5);
    expect(center[1]).toBeCloseTo(-2, 5);
  });

  it('cuts the sides off a circle where they end on it, about its centre', () => {
    const circle = circleOutline({ radius: 5, sides: 48, center: [3, 0] });
    const shape = meant({ kind: 'loft', outline: clipped(circle, [1, 0, 6]), levels: LEVELS });
    expect(shape).toMatchObject({ kind: 'moved', by: [3, 0, 0], shape: { kind: 'loft', circle: 5 } });
  });

  it('takes no circle where sides leave it as tangents', () => {
    const discs = [0, 8].map((x) => circleOutline({ radius: 5, sides: 48, center: [x, 0] }));
    const outline = clipped(hullOutline(discs), [1, 0, 6]);
    const shape = meant({
      kind: 'loft',
      outline,
      levels: [
        [0, 0],
        [2, 0],
      ],
    });
    expect(shape).toMatchObject({ kind: 'loft' });
    expect(shape).not.toHaveProperty('circle');
    expect(lineVolume(shape).volume / (2 * ((Math.PI * 25) / 2 + 10 * 6))).toBeCloseTo(1, 6);
  });

  it.each<[string, Shape]>([
    [
      'a lathe',
      {
        kind: 'lathe',
        sides: 48,
        circumscribed: false,
        contour: [
          [5, 0],
          [5, 0],
          [5, 6],
          [5, 6 + 1e-8],
        ],
      },
    ],
    [
      'a loft',
      {
        kind: 'loft',
        outline: SQUARE,
        levels: [
          [0, 0],
          [0, 0],
          [6, 0],
          [6, 0],
        ],
      },
    ],
  ])('leaves out edges broken by nothing, of %s', (_, shape) => {
    const { contour } = meant(shape) as Extract<MeantShape, { readonly kind: 'revolution' | 'loft' }>;
    expect(contour.map(({ from, to }) => [from[1], to[1]])).toEqual([[0, 6]]);
  });

  it('refuses a fillet around rounded corners', () => {
    const discs = [0, 8].map((x) => circleOutline({ radius: 5, sides: 48, center: [x, 0] }));
    const rounds = [{ from: 0, to: 1, arc: { begins: [0, 1], center: [1, 1] } }] as const;
    const foot: Shape = {
      kind: 'loft',
      outline: hullOutline(discs),
      levels: [
        [0, 1],
        [1, 0],
        [6, 0],
      ],
      rounds,
    };
    expect(() => meant(foot)).toThrow(InputError);
  });
});
