import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type CouplingDesign, designCoupling } from '../../../src/parts/coupling/dimensions.js';
import { couplingSchema } from '../../../src/parts/coupling/sheet.js';
import { couplingBodies } from '../../../src/parts/coupling/solid.js';
import { couplingViews } from '../../../src/parts/coupling/views.js';
import { drawnViews, type Point } from '../../../src/parts/part-views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { createKernel, type Kernel } from '../../../src/solid/kernel.js';
import { place } from '../../../src/solid/mesh.js';
import { couplingSheet } from '../../support/coupling-sheets.js';
import '../../support/seed.js';
import { disagreements, type SectionCheck } from '../../support/section-against-solid.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';
import { randomCoupling } from './random-couplings.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
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
    const stated = expectSoundDrawing({ part: 'coupling', sizes, views, dimensions: made.dimensions[sizes] });
    expect(stated).toBeGreaterThanOrEqual(12);
  });

  it('cuts the hubs as they are', () => {
    const views = couplingViews(made, 'printed');
    const bodies = couplingBodies(made);
    made.hubs.forEach(({ name, printed }, i) => {
      const mesh = kernel.fuse(bodies.find(({ recipe }) => recipe.name === name)!.recipe.shape);
      const end = views.inUse![name]!.by![2];
      const way = name === 'motor-hub' ? 1 : -1;
      const r = printed.outside / 2 + 1;
      const top = printed.length + printed.jaws.height + 1;
      const check: SectionCheck = {
        loops: views.side.hatched[i]!,
        mesh,
        // the slit of the motor hub is drawn above the axis, that of the screw hub below; over the floor a jaw is drawn
        // on the slit's side, a gap between two on the other
        inMesh: ([x, y]) => {
          const [z, across] = [way * (-x - end), way * y];
          const turn =
            across < 0 && z > printed.length && printed.jaws.count % 2 === 0 ? Math.PI / printed.jaws.count : 0;
          return [across * Math.cos(turn), across * Math.sin(turn), z];
        },
        from: [-end - way * top, -r],
        to: [-end + way * 1, r],
      };
      const { tried, wrong } = disagreements(check);
      expect(tried).toBeGreaterThan(500);
      expect(wrong).toEqual([]);
      // and it would tell: a twelfth of its length further along, they differ
      const shifted = (at: Point) => check.inMesh([at[0] + top / 12, at[1]]);
      expect(disagreements({ ...check, inMesh: shifted }).wrong.length).toBeGreaterThan(5);
    });
  });

  it('cuts jaws and insert across the axis as they stand in use', () => {
    const views = couplingViews(made, 'printed');
    const view = drawnViews(views).find(({ title }) => title.startsWith('Section B–B'))!;
    const meshes = couplingBodies(made).map(({ recipe }) => ({
      name: recipe.name,
      mesh: place(kernel.fuse(recipe.shape), views.inUse![recipe.name]!),
    }));
    const reach = made.hubs[0]!.printed.jaws.outer + 0.5;
    const floor = made.hubs.find(({ name }) => name === 'motor-hub')?.printed.length ?? 0;
    const inMesh = ([x, y]: Point) => [x, y, floor + made.gap / 2] as const;
    const [from, to] = [
      [-reach, -reach],
      [reach, reach],
    ] as const;
    const of = (isInsert: boolean) =>
      meshes.filter(({ name }) => (name === 'insert') === isInsert).map(({ mesh }) => mesh);
    expect(disagreements({ loops: view.crossHatched![0]!, mesh: of(true), inMesh, from, to }).wrong).toEqual([]);
    expect(disagreements({ loops: view.hatched.flat(), mesh: of(false), inMesh, from, to }).wrong).toEqual([]);
  });
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
  fc.assert(
    fc.property(randomCoupling, (sheet) => {
      const made = designed(sheet);
      if (!made) return;
      for (const sizes of ['finished', 'printed'] as const)
        expectSoundDrawing({
          part: 'coupling',
          sizes,
          views: couplingViews(made, sizes),
          dimensions: made.dimensions[sizes],
        });
    }),
    { numRuns: 30 },
  );
});

function designed(sheet: unknown): CouplingDesign | undefined {
  try {
    return designCoupling(couplingSchema.parse(JSON.parse(JSON.stringify(sheet))), SHIPPED);
  } catch {
    // refused, as other tests look into
    return undefined;
  }
}
