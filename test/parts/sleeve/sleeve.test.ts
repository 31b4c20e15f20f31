import { describe, expect, it } from 'vitest';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { InputError } from '../../../src/units/faults.js';
import { changed } from '../../support/nut-sheets.js';

const CLAMP = {
  part: 'sleeve',
  name: 'joint',
  form: 'clamp',
  motor: { shaft: { diameter: 5, flat: 4.5, flat_length: 15 }, torque: 0.25, temperature: 55 },
  shaft: 8,
  mounting: 'horizontal',
  retighten: 'yes',
  motor_end: { clamp: { screw: 'M3', washers: 'yes' } },
  screw_end: { clamp: { screw: 'M3', washers: 'yes' } },
  material: 'pc',
  duty: { temperature: 30 },
};
const BUSH = { part: 'sleeve', name: 'bush', form: 'bush', shaft: 5, bore: 8, length: 12 };
type Tree = { readonly [key: string]: unknown };
const rowOf = (sheet: Tree, id: string) => check(design(sheet)).checks.find((row) => row.id === id);

describe('a sleeve', () => {
  it.each([
    ['clamp', CLAMP],
    [
      'clamp of odd shafts',
      changed(CLAMP, {
        motor: { shaft: { form: 'keyed', diameter: 8, flat: undefined, flat_length: undefined }, torque: 0.2 },
        shaft: { across_flats: 6 },
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
    ['bush', BUSH],
    ['bush for a D shaft', { ...BUSH, shaft: { diameter: 5, flat: 4.5 } }],
    ['thin bush', { ...BUSH, bore: 6.35 }],
    ['start sheet', startSheet('sleeve')],
  ])('of the kind %s comes out closed, sized right and mating', async (_, sheet) => {
    const { report, files } = await makePart(sheet);
    expect(report.checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
    expect(files).toHaveLength(2);
    expect(report.bodies[0]!.closed).toBe(true);
  });

  it('warns of over-constraint, always', () => {
    expect(rowOf(CLAMP, 'over-constraint')).toMatchObject({ verdict: 'caution' });
    expect(rowOf({ ...CLAMP, offset: 0.03 }, 'over-constraint')).toMatchObject({ verdict: 'pass' });
    expect(rowOf({ ...CLAMP, offset: 0.1 }, 'over-constraint')).toMatchObject({ verdict: 'caution' });
    expect(rowOf({ ...CLAMP, offset: 0.3 }, 'over-constraint')).toMatchObject({ verdict: 'fail' });
  });

  it.each<[string, string, Tree, string]>([
    ['axial-grip', 'not-told', {}, 'nobody tells what pulls'],
    ['axial-grip', 'not-told', { mounting: undefined, duty: { load: 10 } }, 'nobody tells whether it hangs'],
    ['axial-grip', 'not-told', { duty: { load: 10, temperature: undefined } }, 'nobody tells how hot it gets'],
    ['axial-grip', 'pass', { duty: { load: 10 } }, 'a level shaft'],
    ['axial-grip', 'fail', { duty: { load: 300 } }, 'more than it holds'],
    ['axial-grip', 'fail', { mounting: undefined, duty: { load: 300 } }, 'it may hang, with more than it holds'],
    ['axial-grip', 'pass', { mounting: 'motor-above', duty: { load: 10, span: 300 } }, 'a screw that hangs'],
    ['axial-grip', 'not-told', { mounting: 'motor-below', duty: { load: 10 } }, 'nobody tells what lifts it'],
    ['axial-grip', 'pass', { mounting: 'motor-below', duty: { load: 10, upward: 0 } }, 'nothing lifts it'],
    ['axial-grip', 'fail', { mounting: 'motor-below', duty: { load: 10, upward: 300 } }, 'the work lifts it'],
    ['axial-grip', 'pass', { mounting: 'motor-above', thrust_bearing: 'yes', duty: { load: 300 } }, 'a bearing'],
    ['axial-grip', 'pass', { mounting: 'motor-above', locating_holder: 'yes', duty: { load: 300 } }, 'a holder'],
    ['motor-thrust', 'not-told', { duty: { load: 10 } }, 'no limit of the motor'],
    ['motor-thrust', 'pass', { motor: { axial_limit: 15 }, duty: { load: 10 } }, 'a limit that suffices'],
    ['motor-thrust', 'fail', { motor: { axial_limit: 15 }, duty: { load: 20 } }, 'more than the motor carries'],
    [
      'motor-thrust',
      'fail',
      { mounting: 'motor-above', motor: { axial_limit: 15 }, duty: { load: 14.5, span: 300 } },
      'the screw weighs too',
    ],
    ['heat', 'pass', {}, 'PC on a warm motor'],
    ['heat', 'fail', { material: 'pla' }, 'PLA on a motor'],
    ['heat', 'not-told', { duty: { temperature: undefined } }, 'nobody tells of the room'],
    ['grip-torque', 'pass', {}, 'washers and a second tightening'],
    ['grip-torque', 'caution', { motor: { torque: 0.36 } }, 'it slips when jammed'],
    ['grip-torque', 'fail', { motor: { torque: 0.9 } }, 'a strong motor'],
    ['grip-torque', 'not-told', { duty: { temperature: undefined } }, 'nobody tells of the room'],
    ['grip-torque', 'fail', { motor: { torque: 0.36 }, mounting: 'motor-above' }, 'the axis falls where it slips'],
    ['closing-strain', 'pass', {}, 'a small play'],
    ['closing-strain', 'fail', { screw_end: { bore_clearance: 0.3 } }, 'a loose bore'],
  ])('%s: %s, %o', (id, verdict, changes) => {
    const row = rowOf(changed(CLAMP, changes), id);
    expect(verdict === 'not-told' ? row?.word : row?.verdict, JSON.stringify(row)).toBe(verdict);
  });

  // friction shared by torque and pull: 2·√(T² − working²)/d of the grip at the end of life
  it('pulls with what the torque leaves of the friction', () => {
    const sheet = changed(CLAMP, { duty: { load: 10 } });
    const motorEnd = rowOf(sheet, 'grip-torque')!.value!;
    const pull = (2 * Math.sqrt(motorEnd ** 2 - 250 ** 2)) / 5;
    expect(rowOf(sheet, 'axial-grip')!.value).toBeCloseTo(pull, 3);
    // asked: 2 × (14.5 N and 300 mm of 8 mm steel, 0.395 kg a metre)
    const hung = changed(CLAMP, { mounting: 'motor-above', duty: { load: 14.5, span: 300 } });
    expect(rowOf(hung, 'axial-grip')!.limit!.min).toBeCloseTo(2 * (14.5 + 0.3 * 0.395 * 9.81), 1);
  });

  it('says what would hold a torque that it cannot', () => {
    const row = rowOf(changed(CLAMP, { motor: { torque: 0.9 } }), 'grip-torque')!;
    expect(row).toMatchObject({ verdict: 'fail' });
    expect(row.message).toMatch(/would hold|metal hubs/);
  });

  it.each([
    [{ ...BUSH, bore: 5.4 }, 'bore'],
    [{ ...BUSH, offset: 0.1 }, 'offset'],
    [{ ...BUSH, retighten: 'yes' }, 'retighten'],
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
