import { beforeAll, describe, expect, it } from 'vitest';
import { type CouplingDesign, designCoupling } from '../../../src/parts/coupling/dimensions.js';
import { insertVolume } from '../../../src/parts/coupling/insert.js';
import { jawArea } from '../../../src/parts/coupling/jaws.js';
import { couplingSchema } from '../../../src/parts/coupling/sheet.js';
import { couplingViews } from '../../../src/parts/coupling/views.js';
import { drawViews } from '../../../src/parts/draw-views.js';
import { type DrawnView, viewsOf } from '../../../src/parts/part-views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { circleOutline, type Outline, polygonArea } from '../../../src/solid/outline.js';
import { BOUGHT_HUBS, couplingSheet } from '../../support/coupling-sheets.js';
import '../../support/seed.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';
import { drawRandomCouplings } from './draw-hunt.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

function coupling(changes: Parameters<typeof couplingSheet>[0]): CouplingDesign {
  const sheet = couplingSheet({ printer: { compensation: 'file' }, ...changes });
  return designCoupling(couplingSchema.parse(sheet), SHIPPED);
}

const SHEETS: [string, Parameters<typeof couplingSheet>[0]][] = [
  ['on a disc, D shaft', {}],
  [
    'with stops and two set screws',
    { mounting: 'horizontal', motor_hub: { grip: 'set-screw' }, screw_hub: { grip: 'both' } },
  ],
  [
    'keyed and hexagonal, curved flanks, solid centre, set screw in an insert',
    {
      mounting: 'horizontal',
      motor: { shaft: { form: 'keyed', diameter: 14, length: 30, flat: undefined }, torque: 2 },
      screw: undefined,
      shaft: { across_flats: 12 },
      hubs: { outside_diameter: 55 },
      jaws: { count: 4, flank: 'curved' },
      insert: { center: 'solid' },
      motor_hub: { grip: 'both' },
      screw_hub: { grip: 'set-screw', set_screw: { joint: 'insert' } },
    },
  ],
  [
    'two jaws, a ball, two flats',
    { jaws: { count: 2 }, screw: undefined, shaft: { diameter: 8, flats: 7 }, insert: { pad: 'ball' } },
  ],
  ['a motor hub alone', { screw: undefined, mounting: 'horizontal' }],
  ['a screw hub alone', { motor: { shaft: undefined, torque: 0.3 }, mounting: 'horizontal' }],
  ['large', { hubs: { outside_diameter: 110 }, jaws: { count: 6 }, screw: 'Tr20x4' }],
];

describe.each(SHEETS)('the drawing of a coupling %s', (_, changes) => {
  const made = coupling(changes);

  it.each(['finished', 'printed'] as const)('states its dimensions inside the frame, %s sizes', (sizes) => {
    const views = couplingViews(made, sizes);
    const stated = expectSoundDrawing(kernel, { part: 'coupling', sizes, views, dimensions: made.dimensions[sizes] });
    expect(stated).toBeGreaterThanOrEqual(12);
  });
});

it.each(['finished', 'printed'] as const)('the drawing of an insert alone states all its sizes, %s', (sizes) => {
  for (const insert of [{}, { center: 'solid' }, { lobes: 'barrelled' }]) {
    const made = coupling({ ...BOUGHT_HUBS, insert });
    const views = couplingViews(made, sizes);
    const stated = expectSoundDrawing(kernel, { part: 'coupling', sizes, views, dimensions: made.dimensions[sizes] });
    expect(stated).toBe('center' in insert ? 4 : 5);
  }
});

it('opens jaws and insert across the axis as their plans say', () => {
  const made = coupling({});
  const views = drawViews(kernel, couplingViews(made, 'finished'));
  const across = viewsOf<DrawnView>(views).find(({ title }) => title.startsWith('Section B–B'))!;
  const area = (loops: readonly Outline[]) =>
    loops
      .map(polygonArea)
      .map(Math.abs)
      .sort((a, b) => b - a)
      .reduce((sum, one, i) => (i === 0 ? one : sum - one), 0);
  const { finished, printer } = made.insert;
  expect(area(across.crossHatched![0]!)).toBeCloseTo(insertVolume(finished, printer.chordError) / finished.height, 1);
  const { jaws } = made.hubs[0]!.finished;
  const disc = circleOutline({ radius: jaws.outer, sides: 96 });
  const jawsOfOne = across.hatched[0]!.reduce((sum, loop) => sum + Math.abs(polygonArea(loop)), 0);
  expect(jawsOfOne).toBeCloseTo(jawArea(jaws, 0.01)(disc, made.gap / 2), 0);
});

it('lists every bore and screw with what goes in', () => {
  const rows = couplingViews(coupling({ mounting: 'horizontal', motor_hub: { grip: 'both' } }), 'finished').holes;
  expect(rows.map(({ label }) => label)).toEqual(
    ['M', 'M1', 'M2', 'M3', 'S', 'S1', 'S2', 'I'].filter((label) => rows.some((row) => row.label === label)),
  );
  expect(rows.find(({ note }) => note.startsWith('set'))!.note).toMatch(/^set M\d(\.5)?x\d+, nut$/);
  expect(rows.find(({ label }) => label === 'M1')!.note).toMatch(/^M\d(\.5)?x\d+, nut M\d/);
});

it('draws whatever can be designed', () => {
  drawRandomCouplings(kernel, 2);
});
