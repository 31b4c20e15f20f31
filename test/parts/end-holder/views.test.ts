import { beforeAll, describe, expect, it } from 'vitest';
import { drawViews } from '../../../src/parts/draw-views.js';
import { endHolderKind } from '../../../src/parts/end-holder/index.js';
import { endHolderViews } from '../../../src/parts/end-holder/views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { polygonArea } from '../../../src/solid/outline.js';
import { END_HOLDERS, GUIDED } from '../../support/end-holder-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});
const made = (sheet: object) => endHolderKind.design(endHolderKind.schema.parse(sheet), SHIPPED);

describe.each(Object.keys(END_HOLDERS))('what is drawn of: %s', (name) => {
  const design = made(END_HOLDERS[name]!);

  it.each(['finished', 'printed'] as const)('draws its sizes between its lines, %s sizes', (sizes) => {
    const views = endHolderViews(design, sizes);
    const stated = expectSoundDrawing(kernel, {
      part: 'end-holder',
      sizes,
      views,
      dimensions: design.dimensions[sizes],
    });
    expect(stated).toBeGreaterThan(4);
  });

  it('shows closed companions', () => {
    for (const { mesh } of endHolderViews(design, 'printed').companions) expect(measureMesh(mesh).openEdges).toBe(0);
  });
});

it('cuts pocket and shoulder in its section', () => {
  const views = drawViews(kernel, endHolderViews(made(GUIDED), 'finished'));
  const drawn = views.side.hatched.flat().reduce((sum, loop) => sum + Math.abs(polygonArea(loop)), 0);
  // 44 × 10.85 (6.85 of pocket and 4 behind, up to the half) less the pocket and the opening of the shoulder
  const thickness = 11;
  expect(drawn).toBeCloseTo(44 * thickness - 22.03 * 6.85 - 18.5 * (thickness - 6.85), 0);
});

it('states how its corners are rounded', () => {
  expect(endHolderViews(made(GUIDED), 'finished').notes).toContainEqual(
    expect.stringMatching(/^Corners R 3\.00 ±\d\.\d\d mm$/),
  );
});
