import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { readStl } from '../../../src/output/read-stl.js';
import type { Report } from '../../../src/output/report.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { InputError } from '../../../src/units/faults.js';
import { loopDistance, pointDistance, sectionLoops } from '../../support/section-loops.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { soundOrRefused } from '../../support/sound-or-refused.js';
import { randomAdapter } from './random-adapters.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const DEMO = readFileSync(new URL('../../../presets/sheets/demo-adapter.yaml', import.meta.url), 'utf8');

/** The most common bought nut on a carriage drilled for another; sizes come out as drawn. */
const PLAIN = {
  part: 'adapter',
  name: 'plain',
  nut: {
    body: 10.2,
    length: 15,
    flange: { diameter: 22, thickness: 3.5 },
    holes: { count: 4, circle: 16, diameter: 3.5, screw: 'M3' },
    joint: 'tapped',
  },
  carriage: { bore: 10.8, thickness: 8, holes: { count: 4, circle: 30, diameter: 3.4, screw: 'M3' }, joint: 'through' },
  plate: { thickness: 8, outline: { shape: 'round', diameter: 44 } },
  material: 'petg',
  printer: { layer: 0.2, compensation: 'none' },
  duty: { load: 20, temperature: 25, axis: 'horizontal' },
};

const finding = (report: Report, id: string) => report.checks.find((one) => one.id === id);
const judged = (sheet: object) => check(design(sheet));

describe('adapter', () => {
  it('is made from the demo sheet and from the start sheet, with screws listed by length', async () => {
    for (const sheet of [DEMO, startSheet('adapter')]) {
      const { report, files } = await makePart(sheet, { kernel });
      expect(report.verdict).not.toBe('fail');
      expect(files).toHaveLength(2);
      // flange 3.5 mm and 1.5 diameters of thread: 8 mm; 4 mm of floor, 8 mm of carriage, washer 0.5, nut 2.4 and 1.5 pitches: 15.65 mm
      expect(report.hardware).toContainEqual({ item: 'socket cap screw ISO 4762', size: 'M3x8', count: 4 });
      expect(report.hardware).toContainEqual({ item: 'socket cap screw ISO 4762', size: 'M3x16', count: 4 });
    }
  });

  it('lines its holes up with both patterns, measured on the mesh', async () => {
    const { report, files } = await makePart(PLAIN, { kernel });
    const mesh = readStl(files[0]!.bytes);
    const loops = sectionLoops(mesh, 4.1313);
    const turn = (report.dimensions.finished.clocking as number) * (Math.PI / 180);
    const at = (circle: number, i: number, by: number) =>
      [(circle / 2) * Math.cos((i * Math.PI) / 2 + by), (circle / 2) * Math.sin((i * Math.PI) / 2 + by)] as const;
    for (let i = 0; i < 4; i++) {
      for (const [point, radius] of [
        [at(16, i, turn), 2.5 / 2], // tap drill M3: 3 − 0.5 mm
        [at(30, i, 0), 3.4 / 2], // ISO 273 medium
      ] as const) {
        const near = Math.min(...loops.map((loop) => pointDistance(point, loop)));
        expect(near).toBeGreaterThan(radius - 1e-4);
        expect(near).toBeLessThan(radius + 0.011);
      }
    }
    expect(loops).toHaveLength(1 + 1 + 8);
  });

  it('states the least wall that a section of the mesh shows', async () => {
    for (const circle of [22, 24, 30]) {
      const sheet = {
        ...PLAIN,
        carriage: { ...PLAIN.carriage, joint: 'counterbore', holes: { ...PLAIN.carriage.holes, circle } },
      };
      const made = design(sheet);
      const report = check(made);
      const stated = report.dimensions.finished.least_ligament as number;
      if (stated < 1.2) continue;
      const { files } = await makePart(sheet, { kernel });
      const mesh = readStl(files[0]!.bytes);
      let measured = Infinity;
      for (const z of [0.7171, 2.5437, 4.1313, 6.1793, 7.5137]) {
        const loops = sectionLoops(mesh, z);
        for (const [i, a] of loops.entries())
          for (const b of loops.slice(i + 1)) measured = Math.min(measured, loopDistance(a, b));
      }
      expect(Math.abs(measured - stated)).toBeLessThan(0.025);
    }
  });

  it('turns the nut so that its holes stand between those of the carriage', () => {
    // both circles 22 mm: only half way, at 45°, do M3 holes keep clear: 22·sin(22.5°) − (1.25 + 1.7) mm
    const nut = { ...PLAIN.nut, flange: { diameter: 30, thickness: 3.5 }, holes: { ...PLAIN.nut.holes, circle: 22 } };
    const carriage = { ...PLAIN.carriage, joint: 'insert', holes: { ...PLAIN.carriage.holes, circle: 22 } };
    const { dimensions } = judged({ ...PLAIN, nut, carriage });
    expect(Math.abs(dimensions.finished.clocking as number)).toBe(45);
    // the wall to the bore is less: 11 − 2 − 5.2 = 3.8 mm (insert bore 4 mm); between holes 8.419 − 3.25 = 5.17 mm
    expect(dimensions.finished.least_ligament).toBeCloseTo(3.8, 6);
  });

  it('takes a stated clocking and says that it leaves too little', () => {
    const carriage = { ...PLAIN.carriage, joint: 'insert', holes: { ...PLAIN.carriage.holes, circle: 20 } };
    const nut = { ...PLAIN.nut, holes: { ...PLAIN.nut.holes, circle: 18 } };
    const report = judged({ ...PLAIN, nut, carriage, clocking: 3 });
    expect(finding(report, 'clocking')).toMatchObject({ verdict: 'fail' });
    expect(finding(report, 'clocking')!.message).toContain('Leave clocking out');
    expect(finding(judged({ ...PLAIN, nut, carriage }), 'clocking')!.verdict).toBe('pass');
  });

  it('says what is missing where no turn works, and offers joints, thickness and outline in this order', () => {
    const crowded = (count: number) => ({
      ...PLAIN,
      nut: {
        ...PLAIN.nut,
        joint: 'insert',
        flange: { diameter: 36, thickness: 3.5 },
        holes: { count, circle: 28, diameter: 3.5, screw: 'M3' },
      },
      carriage: { ...PLAIN.carriage, joint: 'insert', holes: { count, circle: 28, diameter: 3.4, screw: 'M3' } },
    });
    // eight holes a pattern: the chord of 22.5° on 28 mm less one insert bore of 4 mm leaves 1.46 mm, which will do
    expect(judged(crowded(8)).dimensions.finished.least_ligament).toBeCloseTo(28 * Math.sin(Math.PI / 16) - 4, 2);
    // nine: the chord of 20° leaves 0.862 mm of the 1.2 mm wanted
    const { message, verdict } = finding(judged(crowded(9)), 'clocking')!;
    expect(verdict).toBe('fail');
    expect(message).toContain('0.34 mm are missing');
    const offered = message.split('No turn is better: ')[1]!;
    expect(offered).toMatch(/joint.*; else .*plate\.thickness|plate\.thickness/);
  });

  it('fails a pattern one screw of which cannot go in, with the miss and the cure', () => {
    const nut = { ...PLAIN.nut, holes: { ...PLAIN.nut.holes, diameter: 2.9 } };
    const report = judged({ ...PLAIN, nut });
    expect(finding(report, 'hole-position-nut')!.verdict).toBe('fail');
    expect(finding(report, 'hole-position-nut')!.message).toMatch(/misses by [\d.]+ mm: use holes [\d.]+ mm larger/);
  });

  it('fails a nut whose pattern misses the carriage, by half of the difference of the circles', () => {
    const nut = {
      part: 'nut',
      name: 'n',
      screw: 'Tr8x2',
      body: { diameter: 14, length: 15 },
      flange: { diameter: 34, thickness: 4 },
      holes: { count: 2, circle: 24, screw: 'M3' },
      carriage: { holes: { count: 2, circle: 22, screw: 'M3' } },
    };
    const { message, verdict } = finding(judged(nut), 'hole-position')!;
    expect(verdict).toBe('fail');
    expect(message).toContain('1 mm of it because the two patterns differ');
    expect(message).toContain('adapter');
  });

  it('reports how far the seat moves along the axis', () => {
    expect(judged(PLAIN).dimensions.finished.height_change).toBe(8);
    const recess = judged({ ...PLAIN, nut: { ...PLAIN.nut, stands: 'away' }, register: { nut: 'recess', depth: 1.5 } });
    expect(recess.dimensions.finished.height_change).toBe(6.5);
    expect(recess.cautions.join()).toContain('6.5 mm');
  });

  it('takes heads, nuts and inserts from the standards', () => {
    const { hardware, dimensions } = judged(PLAIN);
    // through: grip 8, washer 0.5, carriage 8, washer 0.5, nut 2.4, 1.5 pitches 0.75 → 20.15 mm, next usual 25 mm
    expect(hardware).toContainEqual({ item: 'socket cap screw ISO 4762', size: 'M3x25', count: 4 });
    expect(hardware).toContainEqual({ item: 'plain washer ISO 7089', size: 'M3', count: 8 });
    expect(dimensions.finished.carriage_hole_diameter).toBe(3.4);
  });

  it('sinks a nut until a usual screw ends inside the plate', () => {
    const nut = {
      ...PLAIN.nut,
      flange: { diameter: 36, thickness: 3.7 },
      holes: { ...PLAIN.nut.holes, circle: 24 },
      joint: 'hexagon',
    };
    const carriage = { ...PLAIN.carriage, joint: 'counterbore', holes: { ...PLAIN.carriage.holes, circle: 38 } };
    const sheet = { ...PLAIN, nut, carriage, plate: { thickness: 9, outline: { shape: 'hull' } } };
    const report = judged(sheet);
    // 3.7 + 9 = 12.7 mm: the longest usual screw is 12 mm
    expect(report.hardware).toContainEqual({ item: 'socket cap screw ISO 4762', size: 'M3x12', count: 4 });
    // floor: 12 − 3.7 − nut 2.4 − pitch 0.5 = 5.4 mm
    expect(finding(report, 'pocket-floor')!.message).toMatch(/^5\.4 mm|^6 mm/);
  });

  it('floats on sleeves that are tightened on the plate: free within its float on the solid, stopped beyond', async () => {
    const floating = {
      ...PLAIN,
      kind: 'floating',
      screw: 'Tr8x2',
      nut: {
        ...PLAIN.nut,
        flange: { diameter: 34, thickness: 3.5 },
        holes: { count: 4, circle: 24, start: 45, diameter: 5.6, screw: 'M3' },
        joint: 'insert',
      },
      carriage: { bore: 10.8, thickness: 8, holes: { count: 4, circle: 44, diameter: 3.4, screw: 'M3' } },
      plate: { thickness: 8, outline: { shape: 'round', diameter: 60 } },
    };
    const { report } = await makePart(floating, { kernel });
    expect(finding(report, 'solid-float')).toMatchObject({ verdict: 'pass' });
    // (5.6 − 5)/2, less half of 0.35 % of 24 mm, for which nobody compensates
    expect(finding(report, 'mount-float')!.value).toBeCloseTo(0.258, 9);
    // 0.05 mm along, and 2 · 2 · 0.3 / (2 π · 12) by turning
    expect(finding(report, 'float-backlash')!.value).toBeCloseTo(0.05 + 1.2 / (24 * Math.PI), 6);
    expect(report.hardware).toContainEqual({ item: 'sleeve, steel or brass', size: '5 x 3.2 x 3.55 mm', count: 4 });
    expect(report.cautions.join()).toContain('Nothing tight may clamp the flange');
  });

  it('floats on sleeves whose holes were drilled into the side of its body', async () => {
    // holes of 5.9 mm at 8 mm from the axis reach to 5.05 mm, into a body of 5.1 mm
    const small = {
      ...PLAIN,
      kind: 'floating',
      float: { sideways: 0.3, spacer: 'sleeve', sleeve: 5.3 },
      nut: {
        ...PLAIN.nut,
        flange: { diameter: 24, thickness: 3.5 },
        holes: { count: 4, circle: 16, start: 45, diameter: 5.9, screw: 'M3' },
      },
      carriage: { bore: 10.8, thickness: 8, holes: { count: 4, circle: 38, diameter: 3.4, screw: 'M3' } },
    };
    const { report } = await makePart(small, { kernel });
    expect(finding(report, 'solid-float')).toMatchObject({ verdict: 'pass' });
  });

  it('floats between its limits and says how far it turns', () => {
    const report = judged({ ...PLAIN, kind: 'floating' });
    // flange holes 3.5 mm on M3 screws: 0.25 mm each way, less half of 0.35 % of 16 mm; at the least 0.03/2 of both readings,
    // 0.2 % of 16 mm by half and 0.1 mm of scatter less
    const { least, value, most } = finding(report, 'mount-float')!;
    const worst = 0.25 - 0.015 - 0.015 - 0.044 - 0.1;
    expect([least, value, most]).toEqual([worst, 0.222, 0.253].map((one) => expect.closeTo(one!, 6)));
  });

  describe('with a rim', () => {
    const rimmed = (aside: number) => ({
      part: 'adapter',
      name: 'rim',
      kind: 'blank',
      carriage: {
        bore: 19.6,
        thickness: 10,
        offset: [aside, 0],
        holes: { count: 2, circle: 56.2, diameter: 3.4, screw: 'M3' },
      },
      plate: { bore: 15.8 },
      register: { carriage: 'rim' },
      material: 'petg',
      printer: { compensation: 'none' },
    });

    // 19.6 mm of bore less 0.2 mm of clearance, 15.8 mm of bore in it: (19.4 − 15.8)/2 − aside
    it.each([
      [0, 1.8, 'pass'],
      [0.3, 1.5, 'caution'],
      [0.9, 0.9, 'caution'],
      [1.7, 0.1, 'fail'],
      [2.5, -0.7, 'fail'],
    ])('whose bore stands %d mm off its middle, leaves a wall of %d mm', (aside, wall, verdict) => {
      const found = finding(judged(rimmed(aside)), 'rim-wall')!;
      expect(found.value).toBeCloseTo(wall, 6);
      expect(found.verdict).toBe(verdict);
    });

    it('is never accepted where its wall is gone', () => {
      const accept = [{ check: 'rim-wall', reason: 'the rim only shows where the plate goes' }];
      expect(() => check(design(rimmed(2.5)), { accept })).toThrow(/cannot be accepted below 0 mm/);
      expect(check(design(rimmed(1.7)), { accept }).verdict).toBe('caution');
    });

    it('must stand on the plate', () => {
      const plate = { bore: 15.8, outline: { shape: 'rectangular', size: [70, 18] } };
      const found = finding(judged({ ...rimmed(0), plate }), 'clocking')!;
      // the bore of 15.8 mm in 18 mm leaves 1.1 mm; the rim of 19.4 mm hangs over the edge by 0.7 mm, of 1.2 mm wanted
      expect(found.value).toBeCloseTo(0.5, 6);
      expect(found.message).toContain('the rim and the edge');
    });
  });

  it.each([7.4, 12.5, 15, 18])(
    'is a blank plate with holes of %d mm, of the volume that was worked out',
    async (diameter) => {
      const { report } = await makePart(
        {
          part: 'adapter',
          name: 'blank',
          kind: 'blank',
          carriage: { thickness: 10, holes: { count: 4, circle: 70, diameter } },
          plate: { bore: 15.8 },
          material: 'petg',
          printer: { compensation: 'file', chord_error: 0.05 },
        },
        { kernel },
      );
      expect(report.verdict).not.toBe('fail');
      // no listed head covers a hole above 13 mm
      const screw = report.assumptions.find(({ field }) => field === 'carriage.holes.screw');
      expect(screw?.value).toBe(diameter > 13 ? undefined : diameter < 8 ? 'M6' : 'M8');
    },
  );

  it('puts a rim into the carriage and a catch nut under the flange', async () => {
    const carriage = {
      ...PLAIN.carriage,
      bore: 28,
      joint: 'counterbore',
      holes: { ...PLAIN.carriage.holes, circle: 40 },
    };
    const rimmed = await makePart(
      { ...PLAIN, carriage, plate: { outline: { shape: 'hull' } }, register: { carriage: 'rim', depth: 2 } },
      { kernel },
    );
    expect(rimmed.report.verdict).not.toBe('fail');
    expect(rimmed.report.bodies[0]!.bounds[0][2]).toBeCloseTo(-2, 5);
    const caught = await makePart(
      {
        ...PLAIN,
        screw: 'Tr8x8(P2)',
        nut: {
          ...PLAIN.nut,
          flange: { diameter: 32, thickness: 3.5 },
          stands: 'away',
          holes: { ...PLAIN.nut.holes, circle: 25 },
        },
        carriage,
        plate: { thickness: 12, outline: { shape: 'hull' } },
        register: { nut: 'none' },
        catch_nut: { across_flats: 13, height: 6.5, gap: 0.8 },
      },
      { kernel },
    );
    expect(caught.report.verdict).not.toBe('fail');
    expect(finding(caught.report, 'catch-nut')).toMatchObject({ verdict: 'pass', value: 0.8 });
  });

  it('wants two turns of a catch nut', () => {
    const caught = (height: number) =>
      judged({
        ...PLAIN,
        screw: 'Tr8x2',
        nut: {
          ...PLAIN.nut,
          stands: 'away',
          holes: { ...PLAIN.nut.holes, circle: 25 },
          flange: { ...PLAIN.nut.flange, diameter: 40 },
        },
        carriage: { ...PLAIN.carriage, holes: { ...PLAIN.carriage.holes, circle: 60 } },
        plate: { thickness: 12, outline: { shape: 'hull' } },
        register: { nut: 'none' },
        catch_nut: { across_flats: 13, height, gap: 0.8 },
      });
    expect(finding(caught(3.9), 'catch-nut')!.verdict).toBe('caution');
    expect(finding(caught(4), 'catch-nut')!.verdict).toBe('pass');
  });

  it('offers a catch nut where the screw does not hold', () => {
    const sheet = { ...PLAIN, screw: 'Tr8x8(P2)', duty: { ...PLAIN.duty, axis: 'vertical' } };
    expect(finding(judged(sheet), 'catch-nut')!.verdict).toBe('caution');
    expect(judged(sheet).cautions.join()).toContain('catch nut');
  });

  it.each([
    ['nut', { ...PLAIN, nut: undefined }],
    ['plate.bore', { ...PLAIN, nut: undefined, kind: 'blank' }],
    [
      'plate.outline.corners',
      {
        ...PLAIN,
        plate: {
          outline: {
            shape: 'polygon',
            corners: [
              [0, 0],
              [9, 9],
              [9, 0],
              [0, 9],
            ],
          },
        },
      },
    ],
    ['plate.cutouts', { ...PLAIN, plate: { ...PLAIN.plate, cutouts: [{ at: [19, 0], size: [2, 60] }] } }],
    [
      'register.nut',
      {
        ...PLAIN,
        register: { nut: 'recess' },
        nut: { ...PLAIN.nut, flange: { diameter: 22, flats: 16, thickness: 3 } },
      },
    ],
    ['hold', { ...PLAIN, kind: 'floating', hold: 'keys' }],
    // holes of 3.5 mm whose middles lie 10 mm out break through the rim of a flange of 22 mm
    [
      'nut.holes',
      {
        ...PLAIN,
        kind: 'floating',
        nut: { ...PLAIN.nut, joint: 'insert', holes: { ...PLAIN.nut.holes, circle: 20 } },
      },
    ],
    ['catch_nut', { ...PLAIN, screw: 'Tr8x2', catch_nut: { across_flats: 13, height: 6 } }],
  ])('refuses a sheet with a mistake in %s', (path, sheet) => {
    let thrown: unknown;
    try {
      design(sheet);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(InputError);
    expect((thrown as InputError).faults.map((fault) => fault.path)).toContain(path);
  });
});

describe('random adapters', () => {
  it('are sound, or refused with the reason', async () => {
    const counts = { refused: 0, failed: 0, made: 0 };
    await fc.assert(
      fc.asyncProperty(randomAdapter, async (sheet) => {
        counts[await soundOrRefused(sheet, kernel)]++;
      }),
      { numRuns: 14, seed: 4 },
    );
    expect(counts.made).toBeGreaterThan(3);
  });
});
