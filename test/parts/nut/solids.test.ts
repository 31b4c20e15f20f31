import { beforeAll, describe, expect, it } from 'vitest';
import { design, makePart } from '../../../src/index.js';
import { listPresets } from '../../../src/presets/list-presets.js';
import { readPreset } from '../../../src/presets/read-preset.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { parseDesignation } from '../../../src/standards/threads/designation.js';
import { facetsOf } from '../../support/axial-cut.js';
import { nutSheet } from '../../support/nut-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

/** A flange wide enough for any hole of the table. */
const WIDE = { shape: 'round', diameter: 44, thickness: 7 } as const;

async function make(changes: Record<string, unknown>) {
  const made = await makePart(nutSheet({ duty: undefined, ...changes }), { kernel });
  const fails = made.report.checks
    .filter(({ verdict }) => verdict === 'fail')
    .map(({ id, message }) => `${id}: ${message}`);
  return { ...made, fails };
}

/** Joins the corners of an STL by their exact bits and measures what it closes. */
function measured(bytes: Uint8Array) {
  const corners = facetsOf(bytes);
  const indices = Uint32Array.from({ length: corners.length / 3 }, (_, i) => i);
  return measureMesh({ positions: Float64Array.from(corners), triangles: indices });
}

const SHAPES: readonly [string, Record<string, unknown>][] = [
  ['round body, no flange', { flange: undefined, holes: undefined, mounting: undefined }],
  ['square body', { body: { shape: 'square', diameter: undefined, across_flats: 17 }, holes: { start: 0 } }],
  ['square body by width', { body: { shape: 'square', diameter: undefined, width: 17 }, holes: { start: 0 } }],
  ['hexagonal body', { body: { shape: 'hexagon', diameter: undefined, across_flats: 17 } }],
  [
    'square block with holes along it',
    {
      body: { shape: 'square', diameter: undefined, across_flats: 36 },
      flange: undefined,
      holes: { circle: 34 },
      mounting: undefined,
    },
  ],
  ['body with flats', { body: { flats: 15.5 } }],
  ['square flange', { flange: { shape: 'square', diameter: undefined, width: 34, corner: 3 } }],
  ['square flange, sharp', { flange: { shape: 'square', diameter: undefined, width: 34 } }],
  [
    'rectangular flange',
    {
      flange: { shape: 'rectangular', diameter: undefined, size: [40, 26] },
      holes: { count: undefined, circle: undefined, start: undefined, rectangle: [28, 14] },
    },
  ],
  [
    'two-ear flange',
    {
      flange: { shape: 'two-ear', diameter: undefined, size: [44, 22], ear: 11 },
      holes: { count: 2, circle: 31, start: 0 },
    },
  ],
  ['round flange with flats', { flange: { flats: 22 }, holes: { count: 2, start: 0, circle: 27 } }],
  ['flange set off by a stub', { flange: { offset: 2 } }],
  ['counterbores', { flange: WIDE, holes: { circle: 31, joint: 'counterbore' } }],
  ['counterbores on the body side', { flange: WIDE, holes: { circle: 31, joint: 'counterbore', head: 'body' } }],
  ['hexagon pockets', { flange: WIDE, holes: { circle: 31, joint: 'hexagon' } }],
  ['inserts', { flange: WIDE, holes: { circle: 31, joint: 'insert', fit: undefined } }],
  ['no fillet, no relief', { fillet: 0, relief: 0 }],
  ['large fillet', { fillet: 2.5, holes: { head: 'flange' } }],
  ['a mark', { mark: 'Tr10x2', flange: WIDE, holes: { circle: 35 } }],
  ['a marked way up, flange down', { mounting: 'flange-down', duty: { axis: 'vertical', temperature: 20 } }],
  ['a marked way up, flange up', { mounting: 'flange-up', duty: { axis: 'vertical', temperature: 20 } }],
  ['a coarse chord', { printer: { chord_error: 0.05 } }],
  [
    'switched-off compensation',
    {
      printer: { compensation: 'none' },
      fit: { diametral: 0.8, axial: 0.4 },
      holes: { fit: undefined, diameter: 3.8 },
    },
  ],
  ['a line over the diameter', { printer: { hole_offset: { at_zero: 0.2, per_mm: -0.004 }, outside_offset: 0.05 } }],
];

/** [designation, body diameter, length, layer]: all forms, 1, 2 and 4 starts, small and large. */
const SCREWS: readonly [string, number, number, number][] = [
  ['Tr8x2', 15, 12, 0.08],
  ['Tr8x4(P2)', 15, 14, 0.1],
  ['Tr8x8(P2)', 15, 20, 0.12],
  ['Tr8x8(P2)-LH', 15, 20, 0.12],
  ['Tr16x4-LH', 26, 24, 0.2],
  ['Tr60x36(P9)', 80, 24, 0.2],
  ['Acme 3/8-10', 17, 15, 0.12],
  ['Acme 1/2-10-2start-LH', 20, 20, 0.1],
  ['Acme 1/2-10-4start', 20, 24, 0.1],
  ['M8', 14, 12, 0.1],
  ['M20x2.5-LH', 30, 24, 0.12],
];

describe('solids of nuts', () => {
  it.each(SHAPES)('%s', async (_, changes) => {
    const { fails, files, report } = await make(changes);
    expect(fails).toEqual([]);
    const found = measured(files[0]!.bytes);
    expect(found).toMatchObject({ openEdges: 0, repeatedVertexFacets: 0, shells: 1 });
    expect(found.leastFacetArea).toBeGreaterThan(1e-9);
    expect(found.volume).toBeCloseTo(report.bodies[0]!.volume, 6);
  });

  it.each(SCREWS)('%s', async (screw, diameter, length, layer) => {
    const { fails } = await make({
      screw,
      body: { diameter, length },
      flange: undefined,
      holes: undefined,
      mounting: undefined,
      printer: { layer },
    });
    expect(fails).toEqual([]);
  });

  it.each([3, 10, 20, 35])('a flank of %s degrees', async (angle) => {
    const screw = { major: 12, pitch: 3, flank_angle: angle, hand: 'right', pitch_diameter: 10.5 };
    const { fails } = await make({ screw, body: { diameter: 20 }, fit: { axial: 0.2 } });
    expect(fails).toEqual([]);
  });

  it('gives the same bytes twice', async () => {
    const [first, second] = [await make({}), await make({})];
    expect(first.files.map(({ bytes }) => Buffer.from(bytes).toString('base64'))).toEqual(
      second.files.map(({ bytes }) => Buffer.from(bytes).toString('base64')),
    );
  });

  it('mirrors a left-hand nut exactly: same volume, same bounds', async () => {
    const left = await make({ screw: 'Tr10x2-LH' });
    const right = await make({});
    expect(left.report.bodies[0]!.volume).toBeCloseTo(right.report.bodies[0]!.volume, 2);
    expect(left.report.bodies[0]!.bounds).toEqual(right.report.bodies[0]!.bounds);
  });
});

describe('preset screws', () => {
  const screws = listPresets(SHIPPED, 'screw').map(({ id }) => readPreset('screw', id, SHIPPED).data);
  const TAPPED = 'pilot-and-tap';
  const sheet = ({ designation, suits }: (typeof screws)[number]) => ({
    screw: designation,
    body: {
      diameter: parseDesignation(designation).major + 7,
      length: Math.max(12, 1.2 * parseDesignation(designation).major),
    },
    flange: undefined,
    holes: undefined,
    mounting: undefined,
    printer: suits === TAPPED ? {} : { ...SUITED, preset: suits },
  });
  /** the preset's own nozzle and layer stand in for the sound nut's */
  const SUITED = { nozzle: undefined, layer: undefined, hole_offset: undefined };

  it('ship in good number', () => {
    expect(screws.length).toBeGreaterThan(20);
  });

  it.each(screws.filter(({ suits }) => suits !== TAPPED))(
    '$designation is made with the printer that suits it',
    async (preset) => {
      const { fails, files } = await make(sheet(preset));
      expect(fails).toEqual([]);
      expect(measured(files[0]!.bytes)).toMatchObject({ openEdges: 0, shells: 1 });
    },
  );

  it.each(screws.filter(({ suits }) => suits === TAPPED))(
    '$designation is refused or doubted, with a pilot bore and a tap instead',
    async (preset) => {
      const { report, files, fails } = await make(sheet(preset));
      const depth = report.checks.find(({ id }) => id === 'print-thread-depth');
      expect(depth?.message).toMatch(/pilot hole and tap/);
      expect(depth?.verdict).not.toBe('pass');
      expect(files.length === 0).toBe(fails.length > 0);
    },
  );
});

it('refuses a fillet that would reach past the broken edge of the body', () => {
  // 18 mm of body, 3 of stub and 10 of flange leave 5, the broken edge 4.6: nine tenths are 4.14
  const sheet = (fillet: number) =>
    nutSheet({ flange: { diameter: 60, thickness: 10, offset: 3 }, holes: { circle: 46 }, relief: 0.4, fillet });
  expect(() => design(sheet(4.14))).not.toThrow();
  expect(() => design(sheet(4.2))).toThrow(
    /fillet: 4\.2 mm; must be at most 4\.14 mm, nine tenths of the body over the flange/,
  );
});
