import { beforeAll, describe, expect, it } from 'vitest';
import { sleeveKind } from '../../../src/parts/sleeve/index.js';
import { sleeveBody } from '../../../src/parts/sleeve/solid.js';
import { sleeveViews } from '../../../src/parts/sleeve/views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { createKernel, type Kernel } from '../../../src/solid/kernel.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { SLEEVES } from '../../support/odd-sheets.js';
import { disagreements } from '../../support/section-against-solid.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

describe.each(Object.keys(SLEEVES))('what is drawn of: %s', (name) => {
  const made = sleeveKind.design(sleeveKind.schema.parse(SLEEVES[name]), SHIPPED);
  const views = sleeveViews(made, 'printed');

  it('hatches the material that the solid has there, nothing in its slit', () => {
    const { outside, length } = made.printed;
    const { tried, wrong } = disagreements({
      loops: views.side.hatched.flat(),
      mesh: kernel.fuse(sleeveBody(made).recipe.shape),
      inMesh: ([across, x]) => [x, 1e-4, -across],
      from: [-length - 1, -outside / 2 - 1],
      to: [1, outside / 2 + 1],
    });
    expect(tried).toBeGreaterThan(500);
    expect(wrong).toEqual([]);
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

it('shows the lower end of a clamp sleeve as well, and of a bush only one', () => {
  const drawn = (name: string) =>
    sleeveViews(sleeveKind.design(sleeveKind.schema.parse(SLEEVES[name]), SHIPPED), 'finished');
  expect(drawn('clamp for thin shafts').other?.title).toBe('Motor end');
  expect(drawn('thinnest bush').other).toBeUndefined();
});
