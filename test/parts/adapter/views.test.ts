import { beforeAll, describe, expect, it } from 'vitest';
import { adapterKind } from '../../../src/parts/adapter/index.js';
import { adapterViews } from '../../../src/parts/adapter/views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { createKernel, type Kernel } from '../../../src/solid/kernel.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { ADAPTERS } from '../../support/odd-sheets.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

describe.each(Object.keys(ADAPTERS))('what is drawn of: %s', (name) => {
  const made = adapterKind.design(adapterKind.schema.parse(ADAPTERS[name]), SHIPPED);
  const views = adapterViews(made, 'printed');

  it.each(['finished', 'printed'] as const)('draws its sizes between its lines, %s sizes', (sizes) => {
    const views = adapterViews(made, sizes);
    expectSoundDrawing(kernel, { part: 'adapter', sizes, views, dimensions: made.dimensions[sizes] });
  });

  it('numbers every hole of the table in a view', () => {
    const letters = [views.end, views.other].flatMap((view) => view?.letters.map(({ text }) => text) ?? []);
    for (const { label } of views.holes.filter((hole) => !hole.label.startsWith('X'))) expect(letters).toContain(label);
  });

  it('shows its nut as closed meshes, the flange on its seat', () => {
    for (const { mesh } of views.companions) expect(measureMesh(mesh).openEdges).toBe(0);
  });
});
