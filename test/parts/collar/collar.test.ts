import { beforeAll, describe, expect, it } from 'vitest';
import { collarKind } from '../../../src/parts/collar/index.js';
import { collarViews } from '../../../src/parts/collar/views.js';
import { drawViews } from '../../../src/parts/draw-views.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { polygonArea } from '../../../src/solid/outline.js';
import { InputError } from '../../../src/units/faults.js';
import { HALVES, PLAIN, THREADED, THREADED_HALVES } from '../../support/collar-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';

const COLLARS: Readonly<Record<string, object>> = {
  'own thread and pin': THREADED,
  'own thread in a lip, left-handed, two starts': changed(THREADED, {
    screw: { designation: 'Tr12x6(P3)-LH', major: undefined },
    bearing: 51102,
    pin: 2.5,
  }),
  'friction on a shaft': PLAIN,
  'friction on crests in front of a metal collar': changed(PLAIN, {
    shaft: undefined,
    screw: 'Tr8x2',
    mounting: 'motor-above',
    backed_by: 'metal-collar',
    bearing: 'F8-19',
  }),
  'friction on a flat, in a lip': changed(PLAIN, { shaft: { diameter: 8, flat: 7.2 }, bearing: 51101 }),
  'two halves on a shaft': HALVES,
  'two halves of two screws each, in a lip': changed(HALVES, {
    shaft: 8,
    bearing: 51101,
    hold: { clamp: { count: 2 } },
  }),
  'two halves by their own thread': THREADED_HALVES,
  'no bearing, two screws': changed(PLAIN, { bearing: undefined, hold: { clamp: { count: 2 } } }),
};

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

describe.each(Object.keys(COLLARS))('a collar: %s', (name) => {
  it('comes out closed, sized right and mating', async () => {
    const { report } = await makePart(COLLARS[name]!, { kernel });
    expect(report.checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
    const isHalved = 'form' in COLLARS[name]!;
    expect(report.bodies.map(({ closed }) => closed)).toEqual(isHalved ? [true, true] : [true]);
    if (isHalved) expect(report.bodies[0]!.volume / report.bodies[1]!.volume).toBeCloseTo(1, 3);
  });

  it.each(['finished', 'printed'] as const)('draws its sizes between its lines, %s sizes', (sizes) => {
    const made = collarKind.design(collarKind.schema.parse(COLLARS[name]), SHIPPED);
    const views = collarViews(made, sizes);
    expectSoundDrawing(kernel, { part: 'collar', sizes, views, dimensions: made.dimensions[sizes] });
  });
});

it('makes its start sheet', async () => {
  const { report } = await makePart(startSheet('collar'), { kernel });
  expect(report.verdict).toBe('pass');
});

it('in halves is cut across its joint, and every clamp screw of both sides has its row', () => {
  const made = collarKind.design(collarKind.schema.parse(COLLARS['two halves of two screws each, in a lip']), SHIPPED);
  const { side, further, holes } = collarViews(made, 'finished');
  const joint = further!.find(({ solid }) => solid?.sight.kind === 'across')!;
  expect(joint.title).toMatch(/^Section A–A/);
  expect(side.planes?.map(({ letter }) => letter)).toEqual(['A', 'A']);
  const { offset } = made.finished.clamp;
  const screws = holes.filter(({ label }) => /^\d$/.test(label));
  expect(screws.map(({ label, at }) => [label, at[0]])).toEqual([
    ['1', offset],
    ['2', offset],
    ['3', -offset],
    ['4', -offset],
  ]);
  expect(side.sizes.find(({ name }) => name === 'clamp_hole_diameter')?.sign).toBe('4 × ⌀');
});

it('is cut on one side of its section, the slit on the other', () => {
  const made = collarKind.design(collarKind.schema.parse(COLLARS['friction on a shaft']), SHIPPED);
  const { outside, length, bore, chamfer } = made.finished;
  const views = drawViews(kernel, collarViews(made, 'finished'));
  const drawn = views.side.hatched.flat().reduce((sum, loop) => sum + Math.abs(polygonArea(loop)), 0);
  // a wall with its four edges broken; chords of the bore take up to 0.01 mm of it
  const wall = (length * (outside - bore.diameter)) / 2 - 4 * (chamfer ** 2 / 2);
  expect(wall - drawn).toBeGreaterThan(-1e-6);
  expect(wall - drawn).toBeLessThan(0.011 * length);
});

describe('a collar refuses', () => {
  it.each([
    [changed(PLAIN, { screw: 'Tr8x2' }), 'shaft'],
    [changed(PLAIN, { shaft: undefined }), 'screw'],
    [changed(PLAIN, { bore: 'thread' }), 'bore'],
    [changed(PLAIN, { pin: 2 }), 'pin'],
    [changed(HALVES, { shaft: { diameter: 8, flat: 7.2 } }), 'form'],
    [changed(PLAIN, { fit: 'close' }), 'fit'],
    [changed(PLAIN, { outside_diameter: 15 }), 'outside_diameter'],
    [changed(PLAIN, { outside_diameter: 18 }), 'outside_diameter'],
    [changed(PLAIN, { length: 5 }), 'length'],
    [changed(PLAIN, { bearing: { bore: 10, outside: 24 } }), 'bearing.height'],
    [changed(PLAIN, { bearing: { bore: 10, outside: 12, height: 5 } }), 'bearing.outside'],
    [changed(PLAIN, { bearing: { designation: '51100', bore: 10 } }), 'bearing.bore'],
    [changed(PLAIN, { bearing: '51199' }), 'bearing'],
    [changed(THREADED, { pin: 1.7 }), 'pin'],
    [changed(THREADED, { pin: 3 }), 'pin'],
    [changed(THREADED, { turned_end: 6 }), 'bore'],
    [changed(THREADED, { hold: { degreased: 'yes' } }), 'hold.degreased'],
  ])('%j at its field', (sheet, path) => {
    try {
      design(sheet);
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).faults.map((fault) => fault.path)).toContain(path);
      return;
    }
    throw new Error('no fault was found');
  });
});

it('takes lengths in inches', () => {
  const made = design({ ...PLAIN, units: 'inch', shaft: 0.375, bearing: undefined });
  expect(made.dimensions.finished.bore_diameter).toBeCloseTo(9.525 + 0.05, 6);
});

it('states the seats of its clamp screws with ±', () => {
  const [sheet] = Object.values(COLLARS);
  const made = collarKind.design(collarKind.schema.parse(sheet), SHIPPED);
  expect(collarViews(made, 'finished').notes).toContainEqual(
    expect.stringMatching(
      /^M\d across the slit, head .*⌀\d+\.\d\d ±\d\.\d\d mm from y −\d+\.\d\d ±\d\.\d\d mm, nut .* from y \d+\.\d\d ±\d\.\d\d mm$/,
    ),
  );
  expect(collarViews(made, 'printed').notes.find((note) => note.includes('across the slit'))).not.toContain('±');
});
