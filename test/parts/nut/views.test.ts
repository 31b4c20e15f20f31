import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { drawViews } from '../../../src/parts/draw-views.js';
import { designNut, type NutDesign } from '../../../src/parts/nut/dimensions.js';
import { nutSchema } from '../../../src/parts/nut/sheet.js';
import { nutViews } from '../../../src/parts/nut/views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { polygonArea } from '../../../src/solid/outline.js';
import { FAMILY_BASE, METAL, SPRING } from '../../support/family-sheet.js';
import '../../support/seed.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';
import { randomFamily } from './random-family.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const BARE = { flange: undefined, holes: undefined };

/** What is changed, and the least count of sizes that are then stated. */
const SHEETS: [string, object, number][] = [
  ['plain', {}, 8],
  [
    'with a square flange and nut traps',
    { flange: { shape: 'square', width: 50, thickness: 6 }, holes: { ...FAMILY_BASE.holes, joint: 'hexagon' } },
    7,
  ],
  [
    'a hexagon with stub, two ears',
    {
      body: { shape: 'hexagon', across_flats: 20, length: 30 },
      flange: { shape: 'two-ear', size: [50, 24], ear: 12, thickness: 5, offset: 3 },
      holes: { count: 2, circle: 38, screw: 'M4', joint: 'counterbore' },
    },
    8,
  ],
  ['split, closed by screws', { family: { kind: 'split' } }, 13],
  [
    'split, closed by a ring, three holes',
    { family: { kind: 'split', closed: 'ring' }, holes: { ...FAMILY_BASE.holes, count: 3, start: 30 } },
    11,
  ],
  ['split, without flange', { family: { kind: 'split' }, ...BARE }, 9],
  ['clamped', { family: { kind: 'clamped' } }, 12],
  ['clamped, without flange', { family: { kind: 'clamped' }, ...BARE }, 7],
  ['twin', { family: { kind: 'twin', apart: 15.5, shift: 0.1 } }, 8],
  ['twin, without flange', { family: { kind: 'twin', apart: 15.5 }, ...BARE }, 4],
  ['anti-backlash', { family: { kind: 'anti-backlash', spring: SPRING } }, 14],
  ['anti-backlash, without flange', { family: { kind: 'anti-backlash', spring: SPRING }, ...BARE }, 10],
  ['holder of a hexagon nut', { family: { kind: 'holder', nut: METAL } }, 9],
  [
    'holder of a square nut, open on the face',
    { family: { kind: 'holder', nut: { ...METAL, shape: 'square' } }, ...BARE },
    5,
  ],
  ['with a nut that stands by', { catch_nut: METAL }, 10],
  [
    'split, large and of many starts',
    {
      family: { kind: 'split', screw: 'M6', pins: { diameter: 4, length: 20 } },
      screw: { designation: 'Tr40x7', hand: 'left' },
      body: { diameter: 90, length: 60 },
      flange: { diameter: 140, thickness: 12 },
      holes: { count: 6, circle: 115, start: 30, screw: 'M8', head: 'flange' },
    },
    13,
  ],
];

function nut(changes: object): NutDesign {
  return designNut(nutSchema.parse(JSON.parse(JSON.stringify({ ...FAMILY_BASE, ...changes }))), SHIPPED);
}

describe.each(SHEETS)('the drawing of a nut, %s', (_, changes, count) => {
  const made = nut(changes);

  it.each(['finished', 'printed'] as const)('states its dimensions inside the frame, %s sizes', (sizes) => {
    const views = nutViews(made, sizes);
    const stated = expectSoundDrawing(kernel, { part: 'nut', sizes, views, dimensions: made.dimensions[sizes] });
    expect(stated).toBeGreaterThanOrEqual(count);
  });

  it('shows screw, spring and metal nut as closed solids that do not stand in the way of a body', () => {
    for (const { mesh, name } of nutViews(made, 'printed').companions) {
      const { openEdges, volume } = measureMesh(mesh);
      expect([name, openEdges, volume > 0]).toEqual([name, 0, true]);
    }
  });
});

it('opens in its section the area that its thread has', () => {
  const made = nut({ holes: undefined });
  const { body, flange, fillet, relief, thread, leadIn, length } = made.finished;
  const views = drawViews(kernel, nutViews(made, 'finished'));
  const drawn = views.side.hatched.flat().reduce((sum, loop) => sum + Math.abs(polygonArea(loop)), 0);
  const [bore, cone] = [thread.minor / 2, thread.major / 2 + leadIn];
  const plate = flange!.thickness * (flange!.size[0] / 2 - bore);
  const stem = (length - flange!.thickness) * (body.across / 2 - bore);
  const broken = 2 * (relief ** 2 / 2) + 2 * ((cone - bore) ** 2 / 2);
  const rounded = (1 - Math.PI / 4) * fillet ** 2;
  // a fillet drawn in eight chords stands 0.6 % of its square proud of the arc
  expect(drawn / 2).toBeCloseTo(plate + stem - broken + rounded, 1);
});

it('has centre lines that stand out of what they cross by 3 mm at most, each way', () => {
  // two ears: 60 mm one way, 36 the other; 30 + 3, and 18 + 0.12 · 18
  const ears = { flange: { shape: 'two-ear', size: [60, 36], ear: 14, thickness: 5 }, holes: undefined };
  const ends = nutViews(nut(ears), 'finished').end.strokes.flatMap((one) =>
    one.kind === 'path' && one.line === 'centre' ? one.points : [],
  );
  expect(Math.max(...ends.map(([x]) => x))).toBeCloseTo(33, 2);
  expect(Math.max(...ends.map(([, y]) => y))).toBeCloseTo(20.16, 2);
});

it('pulls halves off their joint and the follower off the main nut', () => {
  const apart = (changes: object) => nutViews(nut(changes), 'finished').apart!;
  const halves = apart({ family: { kind: 'split' } });
  expect([Math.sign(halves.a![1]), Math.sign(halves.b![1])]).toEqual([1, -1]);
  expect(apart({ family: { kind: 'anti-backlash', spring: SPRING } }).follower![2]).toBeGreaterThan(20);
});

it('tells in the hole table what goes into pins, clamps and pockets', () => {
  const notes = (changes: object) =>
    nutViews(nut(changes), 'finished').holes.map(({ label, note }) => `${label} ${note}`);
  expect(notes({ family: { kind: 'split' } })).toEqual(
    expect.arrayContaining(['P1 pin 2x6', expect.stringMatching(/^C2 M3x\d+, nut M3$/)]),
  );
  expect(notes({ catch_nut: METAL })).toContain('N hexagon: Tr8x2 catch nut');
});

it('draws whatever can be designed', () => {
  fc.assert(
    fc.property(randomFamily, (sheet) => {
      const made = designed(sheet);
      if (!made) return;
      for (const sizes of ['finished', 'printed'] as const)
        expectSoundDrawing(kernel, {
          part: 'nut',
          sizes,
          views: nutViews(made, sizes),
          dimensions: made.dimensions[sizes],
        });
    }),
    { numRuns: 12 },
  );
});

function designed(sheet: unknown): NutDesign | undefined {
  try {
    return designNut(nutSchema.parse(JSON.parse(JSON.stringify(sheet))), SHIPPED);
  } catch {
    // refused, as other tests look into
    return undefined;
  }
}
