import { describe, expect, it } from 'vitest';
import type { SleeveDesign } from '../../../src/parts/sleeve/dimensions.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { InputError } from '../../../src/units/faults.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { BUSH, CLAMP } from '../../support/sleeve-sheets.js';

type Tree = { readonly [key: string]: unknown };
const rowOf = (sheet: Tree, id: string) => findingOf(sheet, id);

/** A D below and two flats above, each round behind where its flats end. */
const SHORT_FLATS = {
  length: 40,
  motor: { torque: 0.2, shaft: { flat_length: 11 } },
  shaft: { diameter: 8, flats: 7, flat_length: 12, length: 30 },
};

describe('a sleeve', () => {
  it.each([
    ['clamp', CLAMP],
    [
      'clamp of odd shafts',
      changed(CLAMP, {
        motor: { shaft: { form: 'keyed', diameter: 8, flat: undefined, flat_length: undefined }, torque: 0.2 },
        shaft: { diameter: undefined, across_flats: 6 },
      }),
    ],
    [
      'clamp, the motor shaft the thicker one',
      changed(CLAMP, {
        shaft: 4,
        screw_end: { bore_clearance: 0.02 },
        motor: { torque: 0.05, shaft: { diameter: 6.35, flat: undefined, flat_length: undefined } },
      }),
    ],
    ['clamp, both flats shorter than their bores', changed(CLAMP, SHORT_FLATS)],
    ['bush', BUSH],
    ['bush for a D shaft', { ...BUSH, shaft: { diameter: 5, flat: 4.5 } }],
    ['thin bush', { ...BUSH, bore: 6.35 }],
    ['start sheet', startSheet('sleeve')],
  ])('of the kind %s comes out closed, sized right and mating', async (_, sheet) => {
    const { report, files } = await makePart(sheet, { kernel: sharedKernel });
    expect(report.checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
    expect(files).toHaveLength(2);
    expect(report.bodies[0]!.closed).toBe(true);
  });

  it('is bored round behind flats that are shorter than their shafts go in', () => {
    const { finished } = design(changed(CLAMP, SHORT_FLATS)) as SleeveDesign;
    for (const [{ bore, depth }, flat] of [
      [finished.bores[0], 11],
      [finished.bores[1]!, 12],
    ] as const) {
      expect(depth).toBeGreaterThan(flat);
      expect(bore.flatFrom).toBeCloseTo(depth - flat + 0.5, 6);
    }
    // a shaft of 9 mm stands with its end 9 mm in, and all of it is flat but 1 mm
    const short = design(changed(CLAMP, { motor: { shaft: { length: 9, flat_length: 8 } } })) as SleeveDesign;
    expect(short.finished.bores[0].bore.flatFrom).toBeCloseTo(1.5, 9);
    // of a flat whose length nobody tells as much is listed as its shaft goes in
    const untold = design(changed(CLAMP, { motor: { shaft: { flat_length: undefined } } })) as SleeveDesign;
    const noted = (made: SleeveDesign) => made.assumptions.find(({ field }) => field === 'motor.shaft.flat_length');
    expect(noted(untold)).toMatchObject({ value: untold.finished.bores[0].depth.toFixed(1) });
    expect(untold.finished.bores[0].bore).toMatchObject({ form: 'd' });
    expect(noted(short)).toBeUndefined();
  });

  // friction shared by torque and pull: 2·√(T² − working²)/d of the grip at the end of life
  it('pulls with what the torque leaves of the friction', () => {
    const sheet = changed(CLAMP, { duty: { load: 10 } });
    const motorEnd = rowOf(sheet, 'grip-torque')!.value!;
    const pull = (2 * Math.sqrt(motorEnd ** 2 - 250 ** 2)) / 5;
    expect(rowOf(sheet, 'axial-grip')!.value).toBeCloseTo(pull, 3);
    // asked: 2 × (14.5 N and 300 mm of 8 mm steel, 0.395 kg a metre)
    const hung = changed(CLAMP, { mounting: 'motor-above', duty: { load: 14.5, upward: 0, span: 300 } });
    expect(rowOf(hung, 'axial-grip')!.limit!.min).toBeCloseTo(2 * (14.5 + 0.3 * 0.395 * 9.81), 1);
  });

  it('says what would hold a torque that it cannot', () => {
    const row = rowOf(changed(CLAMP, { motor: { torque: 0.9 } }), 'grip-torque')!;
    expect(row).toMatchObject({ verdict: 'fail' });
    expect(row.message).toMatch(/would hold|a metal one/);
  });

  it.each([
    [{ ...BUSH, bore: 5.4 }, 'bore'],
    [{ ...BUSH, offset: 0.1 }, 'offset'],
    [{ ...BUSH, retighten: 'yes' }, 'retighten'],
    [{ ...CLAMP, turned_end: 6 }, 'turned_end'],
    [{ ...CLAMP, bore: 9 }, 'bore'],
    [{ ...CLAMP, outside_diameter: 15 }, 'outside_diameter'],
    [{ ...CLAMP, length: 12 }, 'length'],
    [changed(CLAMP, { motor: { torque: undefined } }), 'motor.torque'],
    [changed(CLAMP, { shaft: undefined }), 'shaft'],
  ])('refuses %j at its field', (sheet, path) => {
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
