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

  it('judges the pull that is left beside the torque', () => {
    expect(rowOf(CLAMP, 'axial-grip')!.message).toBe('not judged: duty.load is missing');
    expect(rowOf({ ...CLAMP, duty: { load: 10 } }, 'axial-grip')).toMatchObject({ verdict: 'pass' });
    expect(rowOf({ ...CLAMP, duty: { load: 300 } }, 'axial-grip')).toMatchObject({ verdict: 'fail' });
  });

  it('says what would hold a torque that it cannot', () => {
    const row = rowOf(changed(CLAMP, { motor: { torque: 0.6 } }), 'grip-torque')!;
    expect(row).toMatchObject({ verdict: 'fail' });
    expect(row.message).toMatch(/would hold|metal hubs/);
  });

  it.each([
    [{ ...BUSH, bore: 5.4 }, 'bore'],
    [{ ...BUSH, offset: 0.1 }, 'offset'],
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
