import { describe, expect, it } from 'vitest';
import type { AdapterDesign } from '../../src/parts/adapter/dimensions.js';
import { design } from '../../src/pipeline/design.js';
import { sheetSchema } from '../../src/pipeline/sheet-schema.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import type { Measured } from '../../src/units/measured.js';
import { THREADED as COLLAR } from '../support/collar-sheets.js';
import { couplingSheet } from '../support/coupling-sheets.js';

const nut = (fields: object) => design({ part: 'nut', name: 'n', screw: 'Tr8x2', ...fields });
const finished = (fields: object) => nut(fields).dimensions.finished;

describe('a flange by name', () => {
  it('is the same nut as its figures typed', () => {
    const typed = {
      body: { shape: 'round', diameter: '10.2 mm', length: '15 mm' },
      flange: { shape: 'round', diameter: '22 mm', thickness: '3.5 mm', offset: '1.5 mm' },
      holes: { count: 4, circle: '16 mm', diameter: '3.5 mm' },
    };
    expect(finished({ flange: 'round-22-on-16' })).toEqual(finished(typed));
  });

  it('is listed as assumed', () => {
    expect(nut({ flange: 'round-22-on-16' }).assumptions).toContainEqual(
      expect.objectContaining({ field: 'flange', value: 'round-22-on-16', why: expect.stringMatching(/customary/) }),
    );
  });

  it('gives way to what the sheet says', () => {
    const made = finished({ flange: { preset: 'round-22-on-16', thickness: 5 }, body: { length: 18 } });
    expect(made).toMatchObject({ length: 18, body_diameter: 10.2, flange_diameter: 22, flange_thickness: 5 });
  });

  it('stands where the sheet leaves its fields blank', () => {
    const blank = { flange: { preset: 'round-22-on-16', thickness: null, shape: null }, body: { length: null } };
    expect(finished(blank)).toEqual(finished({ flange: 'round-22-on-16' }));
    expect(finished({ flange: 'round-22-on-16', body: null, holes: null })).toEqual(
      finished({ flange: 'round-22-on-16' }),
    );
  });

  it('leaves a form to a sheet that says its own', () => {
    const made = finished({ flange: 'round-22-on-16', body: { shape: 'square', width: 12, length: 15 } });
    expect(made).toMatchObject({ body_diameter: 12, flange_diameter: 22 });
  });

  it('that does not ship is told at its line', () => {
    const text = 'part: nut\nname: n\nscrew: Tr8x2\nflange: round-22-on-61\n';
    expect(() => design(text)).toThrow(/4:9.*flange: round-22-on-61; no flange preset .*did you mean round-22-on-16/);
  });

  it('may be one of other presets', () => {
    const own = {
      ...SHIPPED,
      'flanges/mine.yaml': SHIPPED['flanges/round-22-on-16.yaml']!.replace('round-22-on-16', 'mine'),
    };
    const made = design({ part: 'nut', name: 'n', screw: 'Tr8x2', flange: 'mine' }, { presets: own });
    expect(made.dimensions.finished).toMatchObject({ flange_diameter: 22 });
  });
});

describe('a bought nut by name', () => {
  // delivered parts: body 10.0 to 10.4 mm, flange 3.3 to 3.7 mm, holes down to 3.0 mm
  it('is as sure as delivered parts are alike', () => {
    const made = design({
      part: 'adapter',
      name: 'a',
      nut: 'round-22-on-16',
      carriage: { bore: 12, holes: { count: 4, circle: 30, diameter: 3.4 } },
    }) as unknown as AdapterDesign;
    const body: Measured = made.nut!.body;
    expect(body.least).toBeCloseTo(10, 6);
    expect(body.most).toBeCloseTo(10.4, 6);
  });
});

describe('a motor by name', () => {
  // frame 17: shaft 5 mm with a flat at 4.5 mm, holding torque up to 0.6 N·m
  it('has the shaft of its frame and the most torque', () => {
    const typed = couplingSheet({
      motor: { shaft: { diameter: 5, flat: 4.5, flat_length: undefined }, torque: '0.6 N m', temperature: undefined },
    });
    const made = design({ ...couplingSheet({}), motor: 'frame-17' });
    expect(made.dimensions.finished.motor_hub).toEqual(design(typed).dimensions.finished.motor_hub);
    expect(made.assumptions[0]).toMatchObject({ field: 'motor', value: 'frame-17' });
  });

  it('takes the torque of the label', () => {
    const made = design({ ...couplingSheet({}), motor: { preset: 'frame-17', torque: '0.3 N m' } });
    expect(made.assumptions[0]!.field).toBe('motor');
  });

  it('reads what older sheets say by the number of the frame', () => {
    const told = (motor: object) => design({ ...couplingSheet({}), motor });
    const named = told({ preset: 'frame-17', torque: '0.3 N m' });
    expect(told({ frame: 17, torque: '0.3 N m' })).toEqual(named);
    expect(() => told({ frame: 18, torque: '0.3 N m' })).toThrow(/motor\.frame: frame-18; no motor preset.*frame-17/);
    expect(() => told({ frame: 'big', torque: '0.3 N m' })).toThrow(/motor\.frame: frame-big; no motor preset/);
  });

  it('jams a collar with the most torque that is met in its frame', () => {
    const made = (motor: unknown) => design({ ...COLLAR, motor } as object);
    const bare = (motor: unknown) => ({ ...made(motor), assumptions: [] });
    expect(bare('frame-17')).toEqual(bare({ torque: '0.6 N m' }));
    expect(bare({ preset: 'frame-17', torque: '0.3 N m' })).toEqual(bare({ torque: '0.3 N m' }));
    expect(bare('frame-17')).not.toEqual(bare({ torque: '0.3 N m' }));
    expect(made('frame-17').assumptions[0]).toMatchObject({ field: 'motor', value: 'frame-17' });
  });

  it('does not tell what the motor of a duty raises, and the sheet hears why', () => {
    const sheet = { part: 'nut', name: 'n', screw: 'Tr8x2', flange: 'round-22-on-16', duty: { motor: 'frame-17' } };
    expect(() => design(sheet)).toThrow(/duty\.motor: frame-17; must be a map such as \{torque: 0\.4 N m\}, read off/);
  });

  it('that does not ship is told with those that do', () => {
    expect(() => design({ ...couplingSheet({}), motor: 'frame-18' })).toThrow(
      /motor: frame-18; no motor preset.*frame-17/,
    );
  });
});

describe('a screw by name', () => {
  it.each([
    ['tr8x8-p2', 'Tr8x8(P2)'],
    ['acme-1-2-10-2start', 'Acme 1/2-10-2start'],
    ['tr8x2', 'Tr8x2'],
  ])('%s is %s', (name, designation) => {
    const body = { diameter: 22, length: 15 };
    const of = (screw: unknown) => design({ part: 'nut', name: 'n', screw, body }).dimensions.finished;
    expect(of(name)).toEqual(of(designation));
    expect(of({ designation: name })).toEqual(of(designation));
  });
});

it('editors know that a name may stand there', () => {
  const at = (kind: string, field: string) => JSON.stringify(sheetSchema(kind).properties?.[field]);
  expect(at('nut', 'flange')).toMatch(/"type":"string".*"preset"/);
  expect(at('adapter', 'nut')).toMatch(/"type":"string".*"preset"/);
  expect(at('coupling', 'motor')).toMatch(/"type":"string".*"preset"/);
  expect(sheetSchema('nut').required).not.toContain('body');
});
