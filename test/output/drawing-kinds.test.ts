import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeDrawing } from '../../src/output/drawing/write-drawing.js';
import { flatSizes } from '../../src/output/flat-sizes.js';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { viewsOf } from '../../src/pipeline/views.js';
import { linePoints, statedSizes, textsInTheWay } from '../support/read-drawing.js';

const shipped = (name: string) => readFileSync(join(import.meta.dirname, `../../presets/sheets/${name}.yaml`), 'utf8');

const PRINT = { material: 'pa12', printer: { compensation: 'file' } };
const bush = (more: object) => ({ part: 'sleeve', name: 'a', form: 'bush', ...PRINT, ...more });
const clamp = (motor: object, shaft: object | string) => ({
  part: 'sleeve',
  name: 'a',
  form: 'clamp',
  motor: { shaft: motor, torque: '0.3 N m' },
  shaft,
  ...PRINT,
});
const nut = {
  body: 10.2,
  length: 15,
  flange: { diameter: 22, thickness: 3.5 },
  holes: { count: 4, circle: 16, start: 45, screw: 'M3' },
};
const plate = (more: object) => ({
  part: 'adapter',
  name: 'a',
  nut,
  carriage: { bore: 10.8, thickness: 8, holes: { count: 4, circle: 32, screw: 'M3' } },
  ...PRINT,
  ...more,
});
const coupon = (more: object) => ({ part: 'coupon', name: 'a', ...PRINT, ...more });

const SHEETS: Readonly<Record<string, string | object>> = {
  'shipped sleeve': shipped('demo-sleeve'),
  'thinnest bush': bush({ shaft: '2 mm', bore: 4 }),
  'widest bush': bush({ shaft: '30 mm', bore: 60, length: 90 }),
  'bush with a flat': bush({ shaft: { diameter: 6, flat: 5.5 }, bore: 10 }),
  'bush with two flats': bush({ shaft: { diameter: 8, flats: 6.5 }, bore: 14 }),
  'bush with a keyway': bush({ shaft: { diameter: 14, form: 'keyed' }, bore: 30 }),
  'hexagonal bush': bush({ shaft: { across_flats: 8 }, bore: 16 }),
  'clamp for keyed and hexagonal shafts': clamp({ diameter: 14, form: 'keyed' }, { across_flats: 12 }),
  'clamp for two flats and a flat': clamp({ diameter: 8, flats: 7 }, { diameter: 6, flat: 5.5 }),
  'clamp for thin shafts': clamp({ diameter: 3 }, '4 mm'),
  'clamp for thick shafts': clamp({ diameter: 25 }, '28 mm'),
  'shipped adapter': shipped('demo-adapter'),
  'adapter with rim and offset': plate({
    carriage: { bore: 22, thickness: 6, offset: [3, -2], holes: { count: 4, circle: 52, start: 10, screw: 'M4' } },
    register: { carriage: 'rim', depth: 1.5 },
  }),
  'adapter on a spigot, nut in a recess': plate({
    nut: { ...nut, stands: 'away' },
    screw: 'Tr8x2',
    carriage: { spigot: 20, thickness: 6, holes: { count: 3, circle: 40, screw: 'M4' }, joint: 'insert' },
    register: { carriage: 'recess', nut: 'recess' },
  }),
  'adapter with a catch nut': plate({
    nut: { ...nut, stands: 'away' },
    screw: 'Tr8x2',
    register: { nut: 'none' },
    catch_nut: { across_flats: 13, height: 6.5 },
    carriage: { thickness: 6, holes: { count: 4, circle: 40, screw: 'M4' } },
  }),
  'floating adapter with keys': plate({
    kind: 'floating',
    hold: 'keys',
    nut: { ...nut, flange: { diameter: 22, flats: 16, thickness: 3.5 } },
    carriage: { bore: 14, thickness: 8, holes: { count: 2, circle: 36, screw: 'M3' } },
  }),
  'blank polygon with cut-outs': {
    part: 'adapter',
    name: 'a',
    kind: 'blank',
    carriage: { thickness: 6, holes: { rectangle: [40, 30], screw: 'M4' } },
    plate: {
      bore: 12,
      outline: {
        shape: 'polygon',
        corners: [
          [-30, -25],
          [30, -25],
          [30, 25],
          [0, 40],
          [-30, 25],
        ],
      },
      cutouts: [
        { at: [30, 0], size: [8, 12], turn: 15 },
        { at: [0, 28], diameter: 6 },
      ],
    },
    ...PRINT,
  },
  'adapter with nut traps and many holes': plate({
    nut: { ...nut, joint: 'hexagon', holes: { count: 6, circle: 16, screw: 'M2.5' }, seat: 'carriage' },
    carriage: { bore: 30, thickness: 8, holes: { count: 8, circle: 50, screw: 'M3' } },
    plate: { outline: { shape: 'round', diameter: 64 } },
  }),
  'large square adapter': plate({
    carriage: { bore: 10.8, thickness: 8, holes: { rectangle: [150, 120], screw: 'M5' } },
    plate: { outline: { shape: 'rectangular', size: [180, 150], corner: 8 } },
  }),
  'shipped coupon': shipped('demo-coupon'),
  'coupon with everything': coupon({
    purposes: ['scale', 'bores', 'thread', 'pockets'],
    screw: 'Tr8x2',
    pockets: { steps: 5 },
  }),
  'coupon of bores': coupon({ purposes: ['bores'], bores: [2, 3, 4, 6, 8, 12, 20, 30] }),
  'coupon of pockets': coupon({ purposes: ['pockets'], pockets: { steps: 7, screw: 'M2' } }),
  'coupon without steps, wide lines': coupon({
    purposes: ['scale', 'thread'],
    screw: 'M3',
    scale: { span: 200, height: 0 },
    printer: { nozzle: 0.8, layer: 0.3 },
  }),
};

describe.each(Object.keys(SHEETS))('the drawing of: %s', (name) => {
  const made = design(SHEETS[name]!);
  const kind = kindOfDesign(KINDS, made);

  it.each(['finished', 'printed'] as const)('states the %s sizes as the report does, each once', (sizes) => {
    const svg = writeDrawing(
      { name: 'a', part: made.part, applied: 'b' },
      { sizes, views: viewsOf(kind, made, sizes) },
    );
    const wanted = new Map(flatSizes(made.dimensions[sizes]));
    const stated = statedSizes(svg);
    expect(stated.length).toBeGreaterThan(0);
    expect(new Set(stated.map((one) => one.name)).size).toBe(stated.length);
    for (const { name: size, text, value } of stated)
      expect(Math.abs(value - wanted.get(size.replace('.', ': '))!), `${size}: ${text}`).toBeLessThan(0.0051);
  });

  it.each(['first', 'third'] as const)('stays in its frame by %s angle, texts clear of each other', (projection) => {
    const views = viewsOf(kind, made, 'finished');
    const svg = writeDrawing({ name: 'a', part: made.part, applied: 'b' }, { sizes: 'finished', views }, projection);
    for (const [x, y] of linePoints(svg)) {
      expect(x).toBeGreaterThanOrEqual(20);
      expect(x).toBeLessThanOrEqual(287);
      expect(y).toBeGreaterThanOrEqual(10);
      expect(y).toBeLessThanOrEqual(200);
    }
    expect(textsInTheWay(svg)).toEqual([]);
  });
});
