import { beforeAll, describe, expect, it } from 'vitest';
import { adapterKind } from '../../../src/parts/adapter/index.js';
import { adapterBody } from '../../../src/parts/adapter/solid.js';
import { inSight } from '../../../src/parts/adapter/views/in-sight.js';
import { adapterViews } from '../../../src/parts/adapter/views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { cosd, sind } from '../../../src/solid/angles.js';
import { createKernel, type Kernel } from '../../../src/solid/kernel.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { ADAPTERS } from '../../support/odd-sheets.js';
import { disagreements } from '../../support/section-against-solid.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

describe.each(Object.keys(ADAPTERS))('what is drawn of: %s', (name) => {
  const made = adapterKind.design(adapterKind.schema.parse(ADAPTERS[name]), SHIPPED);
  const views = adapterViews(made, 'printed');

  it('hatches the material that the solid has there', () => {
    const { cut } = inSight(made, 'printed');
    const { recipe, expected } = adapterBody(made);
    const [[, , low], [x, y, high]] = expected.bounds;
    const reach = Math.hypot(x, y);
    const { tried, wrong } = disagreements({
      loops: views.side.hatched.flat(),
      mesh: kernel.fuse(recipe.shape),
      inMesh: ([across, r]) => {
        const angle = cut[r > 0 ? 0 : 1];
        return [Math.abs(r) * cosd(angle), Math.abs(r) * sind(angle), -across];
      },
      from: [-high - 1, -reach],
      to: [1 - low, reach],
    });
    expect(tried).toBeGreaterThan(500);
    expect(wrong).toEqual([]);
  });

  it('numbers every hole of the table in a view', () => {
    const letters = [views.end, views.other].flatMap((view) => view?.letters.map(({ text }) => text) ?? []);
    for (const { label } of views.holes.filter((hole) => !hole.label.startsWith('X'))) expect(letters).toContain(label);
  });

  it('shows its nut as closed meshes, the flange on its seat', () => {
    for (const { mesh } of views.companions) expect(measureMesh(mesh).openEdges).toBe(0);
  });
});
