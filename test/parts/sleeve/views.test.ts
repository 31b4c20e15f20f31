import { beforeAll, describe, expect, it } from 'vitest';
import { drawViews } from '../../../src/parts/draw-views.js';
import { sleeveKind } from '../../../src/parts/sleeve/index.js';
import { sleeveViews } from '../../../src/parts/sleeve/views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { polygonArea } from '../../../src/solid/outline.js';
import { SLEEVES } from '../../support/odd-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

describe.each(Object.keys(SLEEVES))('what is drawn of: %s', (name) => {
  const made = sleeveKind.design(sleeveKind.schema.parse(SLEEVES[name]), SHIPPED);
  const views = sleeveViews(made, 'printed');

  it.each(['finished', 'printed'] as const)('draws its sizes between its lines, %s sizes', (sizes) => {
    const views = sleeveViews(made, sizes);
    expectSoundDrawing(kernel, { part: 'sleeve', sizes, views, dimensions: made.dimensions[sizes] });
  });

  it('shows closed shafts that stop where the bores do', () => {
    for (const { mesh } of views.companions) expect(measureMesh(mesh).openEdges).toBe(0);
    const heights = views.companions.map(({ mesh }) => [...mesh.positions].filter((_, i) => i % 3 === 2));
    const [lower, upper] = made.printed.bores;
    if (!upper) return;
    expect(Math.max(...heights[0]!)).toBeCloseTo(lower.depth, 9);
    expect(Math.min(...heights[1]!)).toBeCloseTo(made.printed.length - upper.depth, 9);
  });
});

it('opens one side of a bush in its section, the slit on the other', () => {
  const made = sleeveKind.design(sleeveKind.schema.parse(SLEEVES['thinnest bush']), SHIPPED);
  const { outside, length, bores, chamfer } = made.finished;
  const views = drawViews(kernel, sleeveViews(made, 'finished'));
  const drawn = views.side.hatched.flat().reduce((sum, loop) => sum + Math.abs(polygonArea(loop)), 0);
  // a wall with its four edges broken
  const wall = (length * (outside - bores[0].bore.diameter)) / 2 - 4 * (chamfer ** 2 / 2);
  expect(drawn).toBeCloseTo(wall, 1);
  for (const [, y] of views.side.hatched.flat(2) as (readonly [number, number])[]) expect(y).toBeLessThan(0);
});

it('shows the lower end of a clamp sleeve as well, and of a bush only one', () => {
  const drawn = (name: string) =>
    sleeveViews(sleeveKind.design(sleeveKind.schema.parse(SLEEVES[name]), SHIPPED), 'finished');
  expect(drawn('clamp for thin shafts').other?.title).toBe('Motor end');
  expect(drawn('thinnest bush').other).toBeUndefined();
});
