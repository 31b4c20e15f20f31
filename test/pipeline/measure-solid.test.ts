import { beforeAll, describe, expect, it } from 'vitest';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { makePart } from '../../src/pipeline/make.js';
import { type BodyMeasures, type FusedBody, measureBody, measuredFindings } from '../../src/pipeline/measure-solid.js';
import { facetGraph } from '../../src/solid/facet-graph.js';
import { facetRoles } from '../../src/solid/facet-roles.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { ceilingsOf } from '../../src/solid/overhang.js';
import { ceilingByRays, thinnestByRays } from '../support/ray-check.js';
import { sharedKernel } from '../support/shared-kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const COUNTERBORED = {
  part: 'nut',
  name: 'sunk',
  screw: 'Tr8x2',
  body: { diameter: 16, length: 20 },
  flange: { diameter: 44, thickness: 8 },
  holes: { count: 4, circle: 30, screw: 'M4', joint: 'counterbore', head: 'flange' },
  material: 'petg',
  printer: { compensation: 'file', chord_error: 0.05 },
};
const PRINT = { material: 'pa12', printer: { compensation: 'file', chord_error: 0.05 } };

/** Sheets of the kinds, and where the surface of their bodies is plain: no thread, no bevel. */
const SHEETS: Readonly<
  Record<string, { sheet: object; wanted?: (at: readonly number[]) => boolean; threaded?: boolean }>
> = {
  'a blank plate': {
    sheet: {
      part: 'adapter',
      name: 'a',
      kind: 'blank',
      carriage: { bore: 19.6, thickness: 10, holes: { count: 3, circle: 56.2, diameter: 4.4, screw: 'M4' } },
      plate: {
        bore: 15.8,
        outline: { shape: 'round', diameter: 72 },
        cutouts: [{ at: [0, 34], size: [9, 8] }],
        relief: 0,
      },
      register: { carriage: 'rim' },
      ...PRINT,
    },
  },
  'a bush': {
    sheet: {
      part: 'sleeve',
      name: 'b',
      form: 'bush',
      shaft: { diameter: 6, flat: 5.4 },
      bore: 11,
      length: 16,
      ...PRINT,
    },
    wanted: ([, , z]) => z! > 1.2 && z! < 14.8,
  },
  'a counterbored nut': {
    sheet: COUNTERBORED,
    // outside the thread, away from the bevelled edges
    threaded: true,
    wanted: ([x, y, z]) => Math.hypot(x!, y!) > 7 && z! > 1.2 && z! < 19,
  },
  'a coupling': {
    sheet: {
      part: 'coupling',
      name: 'c',
      motor: { shaft: 5, torque: 0.1 },
      shaft: 8,
      mounting: 'horizontal',
      jaws: { fillet: 0, bevel: 0 },
      motor_hub: { grip: 'set-screw' },
      screw_hub: { grip: 'set-screw' },
      ...PRINT,
    },
    wanted: ([, , z]) => z! > 1 && z! < 8,
  },
};

function bodiesOf(sheet: object): FusedBody[] {
  const made = design(sheet);
  return kindOfDesign(KINDS, made)
    .bodies(made)
    .map((plan) => {
      const { name, material, shape } = plan.recipe;
      return { ...plan, body: { ...kernel.fuse(shape), name, material }, file: `${name}.stl` };
    });
}

const beyondThread = ([x, y]: readonly number[]) => Math.hypot(x!, y!) > 6;

describe.each(Object.entries(SHEETS))('%s', (_, { sheet, wanted, threaded = false }) => {
  it('measures as an independent caster says: its walls within 0.05 mm, its ceilings within 5 %', () => {
    for (const from of bodiesOf(sheet)) {
      const { wall } = measureBody(from);
      const cast = thinnestByRays(from.body, { rays: 1500, seed: 3, ...(wanted ? { wanted } : {}) });
      // random places come near the thinnest one, and never below it
      expect(cast, from.file).toBeGreaterThan(wall!.thickness - 0.05);
      if (!wanted) expect(cast, from.file).toBeLessThan(wall!.thickness + 0.05);
      const mesh = facetGraph(from.body);
      const as = { turnOver: from.turnOver ?? false, layer: from.printer.layer };
      const all = ceilingsOf(mesh, facetRoles(mesh, from.recipe.shape), as);
      const area = all.reduce((sum, one) => sum + one.area, 0);
      const up = from.turnOver ? -1 : 1;
      const hung = ceilingByRays(from.body, { up, step: 0.2, ...(threaded ? { wanted: beyondThread } : {}) });
      expect(Math.abs(hung - area), from.file).toBeLessThan(0.05 * area + 0.5);
    }
  });
});

describe('what is said of a solid', () => {
  it('names ceilings on the bed with area, reach and height, and wants support', async () => {
    const { report } = await makePart(COUNTERBORED, { kernel });
    const found = report.checks.find(({ id }) => id === 'measured-overhang')!;
    // head pocket of 7.72 + 0.15 mm around a hole of 4.5 + 0.15 mm, four times; polygons around them hold up to 2 % more
    const rings = Math.PI * (7.87 ** 2 - 4.65 ** 2);
    expect(found.value! / rings).toBeGreaterThan(1);
    expect(found.value! / rings).toBeLessThan(1.03);
    expect(found).toMatchObject({ verdict: 'caution', unit: 'mm²' });
    expect(found.message).toMatch(/mm² of ceiling over air in 4 places, .* held on one side only, 4 mm over the bed/);
    expect(report.print?.support).toBe('needed');
  });

  it('is quiet where the same pockets open upwards', async () => {
    const holes = { ...COUNTERBORED.holes, head: 'body' };
    const { report } = await makePart({ ...COUNTERBORED, holes }, { kernel });
    expect(report.checks.find(({ id }) => id === 'measured-overhang')).toMatchObject({ verdict: 'pass', value: 0 });
    expect(report.print?.support).toBe('none');
  });

  it('is our own fault where a wall was worked out thicker than it is', () => {
    const [from] = bodiesOf(SHEETS['a blank plate']!.sheet);
    const measures: BodyMeasures = measureBody(from!);
    const told = (leastWall: number) =>
      measuredFindings([{ ...measures, from: { ...from!, leastWall: { where: 'wall', size: leastWall } } }]).find(
        ({ id }) => id === 'solid-wall',
      );
    expect(told(measures.wall!.thickness + 0.04)).toMatchObject({ verdict: 'pass', group: 'solid' });
    expect(told(measures.wall!.thickness + 0.06)).toMatchObject({ verdict: 'fail' });
    expect(told(1)).toMatchObject({ verdict: 'pass', value: 0 });
  });
});
