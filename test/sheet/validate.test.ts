import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { map, orShort, quantity, reading, whole, word } from '../../src/sheet/fields.js';
import { readYaml } from '../../src/sheet/read-yaml.js';
import { dutySection } from '../../src/sheet/sections/duty.js';
import { holesSection } from '../../src/sheet/sections/holes.js';
import { limitsSection } from '../../src/sheet/sections/limits.js';
import { materialSection } from '../../src/sheet/sections/material.js';
import { printerSection } from '../../src/sheet/sections/printer.js';
import { screwSection } from '../../src/sheet/sections/screw.js';
import { validate } from '../../src/sheet/validate.js';
import { faultLine, InputError } from '../../src/units/faults.js';

const sheet = map({
  part: z.literal('nut', 'must be nut'),
  screw: screwSection,
  holes: holesSection.optional(),
  thickness: quantity('length', { above: 0, most: 100 }),
  height: quantity('length', { least: 10, most: 60 }).optional(),
  count: whole(1, 12).optional(),
  material: materialSection.optional(),
  printer: printerSection.optional(),
  duty: dutySection.optional(),
  limits: limitsSection.optional(),
});

function lines(text: string): string[] {
  const { value, locate } = readYaml(text);
  try {
    validate(sheet, value, locate);
  } catch (error) {
    if (error instanceof InputError) return error.faults.map((one) => faultLine(one, 'nut.yaml'));
    throw error;
  }
  return [];
}

const SOUND = 'part: nut\nscrew: Tr8x2\nthickness: 4 mm\n';

describe('validate', () => {
  it('accepts a sheet without its optional fields', () => {
    expect(lines(SOUND)).toEqual([]);
    const read = validate(sheet, { part: 'nut', screw: 'Tr8x2', thickness: '4 mm' });
    expect(read).toEqual({ part: 'nut', screw: { designation: 'Tr8x2' }, thickness: 4 });
    expect(Object.hasOwn(read, 'height')).toBe(false);
  });

  it('names the value, the place and what is allowed', () => {
    expect(lines(SOUND.replace('4 mm', '-2 mm'))).toEqual(['nut.yaml:3:12 thickness: -2 mm; must be above 0']);
    expect(lines(SOUND.replace('4 mm', '"400 mm"'))).toEqual([
      'nut.yaml:3:12 thickness: 400 mm; must be at most 100 mm',
    ]);
  });

  it('names every mistake at once, in the order of the text', () => {
    const text =
      'part: bolt\nscrew: {major: 2 mm, pich: 2 mm}\nthickness: 4\ncount: 1.5\nduty: {axis: up, moving: 300 %}\n';
    expect(lines(text)).toEqual([
      'nut.yaml:1:7 part: bolt; must be nut',
      'nut.yaml:2:8 screw.pitch: is missing; give pitch, crests or a designation',
      'nut.yaml:2:8 screw.form: is missing; must be one of trapezoidal, acme, metric-v, or give flank_angle',
      'nut.yaml:2:16 screw.major: 2 mm; must be 2.5 mm to 60.5 mm',
      'nut.yaml:2:28 screw.pich: unknown field; did you mean pitch?',
      'nut.yaml:4:8 count: 1.5; must be a whole number from 1 to 12',
      'nut.yaml:5:14 duty.axis: up; must be one of vertical, horizontal',
      'nut.yaml:5:26 duty.moving: 300 %; must be 0 % to 100 %',
    ]);
  });

  it('tells what must hold between fields even where one of them is wrong', () => {
    expect(lines(`${SOUND}holes: {count: many, diameter: 3 mm}\n`)).toEqual([
      'nut.yaml:4:8 holes.circle: is missing; give one of circle, rectangle and at',
      'nut.yaml:4:16 holes.count: many; must be a whole number from 1 to 24',
    ]);
  });

  it('says what is missing, once', () => {
    expect(lines('part: nut\n')).toEqual([
      'nut.yaml:1:1 screw: is missing; must be a map of fields',
      'nut.yaml:1:1 thickness: is missing',
    ]);
    expect(lines('part: nut\nscrew: {}\nthickness: 1\n')[0]).toBe(
      'nut.yaml:2:8 screw.major: is missing; measure over the crests, or give a designation',
    );
  });

  it('shows a plain value that stands for a map, and its own mistake', () => {
    expect(lines(`${SOUND}printer: {hole_offset: 3 N}\n`)).toEqual([
      'nut.yaml:4:24 printer.hole_offset: 3 N; unit must be one of mm, cm, m, µm, in, ft',
    ]);
    expect(lines(`${SOUND}printer: {compensation: both}\n`)[0]).toBe(
      'nut.yaml:4:25 printer.compensation: both; must be one of file, slicer, none',
    );
  });

  it('takes a known field without a value as not told, and says what is needed where it may not be missing', () => {
    expect(lines(`${SOUND}duty:\n`)).toEqual([]);
    expect(lines(`${SOUND}duty:\n  load: # not weighed yet\n  axis: vertical\n`)).toEqual([]);
    expect(lines(SOUND.replace('4 mm', ''))).toEqual(['nut.yaml:3:12 thickness: is missing']);
    expect(lines(`${SOUND}duty: {lod: }\n`)[0]).toMatch(/unknown field; did you mean load\?/);
  });

  it('takes a section that is no map for what it is', () => {
    expect(lines(`${SOUND}duty: [1]\n`)).toEqual(['nut.yaml:4:7 duty: [1]; must be a map of fields']);
    expect(lines('- part: nut\n')[0]).toMatch(/^nut.yaml:1:1 .*must be a map of fields$/);
    expect(lines('nut')[0]).toBe('nut.yaml:1:1 nut; must be a map of fields');
  });

  it('refuses numbers that are none', () => {
    expect(lines(SOUND.replace('4 mm', '.inf'))).toEqual([
      'nut.yaml:3:12 thickness: Infinity; must be a finite number or a quantity such as 12 mm or 0.5 in',
    ]);
    expect(lines(SOUND.replace('4 mm', '.nan'))[0]).toMatch(/thickness: NaN; must be a finite number/);
    expect(lines(SOUND.replace('4 mm', '-.inf'))[0]).toMatch(/thickness: -Infinity; must be/);
    expect(lines(`${SOUND}count: .inf\n`)[0]).toMatch(/count: Infinity; must be a whole number/);
    expect(lines(`${SOUND}material: {density: .nan}\n`)[0]).toMatch(/material.density: NaN; must be/);
  });

  it('refuses what every object has as an unknown field', () => {
    expect(lines(`${SOUND}constructor: 1\ntoString: 2\n`).map((line) => line.slice(9))).toEqual([
      expect.stringMatching(/^4:14 constructor: unknown field/),
      expect.stringMatching(/^5:11 toString: unknown field/),
    ]);
  });

  it('tells twenty unknown fields of a map, and how many more there are', () => {
    const many = lines(`${SOUND}${Array.from({ length: 8000 }, (_, i) => `strange${i}: 1\n`).join('')}`);
    expect([many.length, many.at(-1)]).toEqual([21, 'nut.yaml:24:12 and 7980 more unknown fields']);
  });

  it('survives a value that holds itself', () => {
    expect(lines(`${SOUND}duty: &d {axis: *d}\n`)[0]).toMatch(/duty.axis: a value that holds itself; must be one of/);
  });

  it('suggests the unit where a length was read in inches', () => {
    expect(lines(`${SOUND}height: 0.5\n`)).toEqual([
      'nut.yaml:4:9 height: 0.5; must be 10 mm to 60 mm (if it was read in inches, write "0.5 in")',
    ]);
  });

  it('takes ± where a reading stands, and refuses it elsewhere', () => {
    const screw = (major: string) => `part: nut\nscrew: {major: ${major}, pitch: 2, form: acme}\nthickness: 4\n`;
    expect(lines(screw('7.95 ± 0.02 mm'))).toEqual([]);
    expect(lines(SOUND.replace('4 mm', '4 ± 0.1 mm'))[0]).toMatch(/thickness: 4 ± 0.1 mm; takes no ± here/);
    expect(lines(`${SOUND}holes: {count: 4, circle: 8 ± 9 mm, diameter: 3}\n`)[0]).toMatch(
      /must be smaller than the value/,
    );
  });

  it('keeps limits by id, plain or as a map', () => {
    const read = validate(sheet, {
      ...{ part: 'nut', screw: 'M8', thickness: 4 },
      limits: { wall: 2, 'wear-pv': { max: '1 MPa' } },
    });
    expect(read.limits).toEqual({ wall: { min: 2, max: 2 }, 'wear-pv': { max: '1 MPa' } });
  });

  it('works without places', () => {
    expect(() => validate(map({ a: word(['x']) }), { b: 1 })).toThrow(/a: is missing; must be one of x/);
  });

  it('throws nothing but input errors', () => {
    const key = fc.constantFrom(
      'part',
      'screw',
      'holes',
      'thickness',
      'duty',
      'printer',
      'limits',
      'material',
      'major',
      'count',
      '__proto__',
    );
    const leaf = fc.oneof(fc.anything({ maxDepth: 1 }), fc.constantFrom('nut', 'Tr8x2', '4 mm', '1 %', 'M3', 4));
    const { tree } = fc.letrec((tie) => ({
      tree: fc.oneof({ maxDepth: 3 }, leaf, fc.dictionary(key, tie('tree')), fc.array(tie('tree'), { maxLength: 3 })),
    }));
    fc.assert(
      fc.property(tree, (value) => {
        try {
          validate(sheet, value);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          expect(error.faults.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('orShort', () => {
  const short = orShort(map({ size: reading('length') }), (size) => ({ size }), 'quantity');

  it('expands plain values only', () => {
    expect(validate(short, '3 ± 0.1 mm')).toEqual({ size: { value: 3, half: 0.1 } });
    expect(validate(short, { size: 3 })).toEqual({ size: { value: 3 } });
    expect(() => validate(short, true)).toThrow('true; must be a map of fields');
  });
});

describe('decimal commas', () => {
  const schema = map({
    screw: map({ major: reading('length').optional(), pitch: quantity('length').optional() }).optional(),
    rectangle: z.tuple([quantity('length'), quantity('length')], 'must be two distances').optional(),
  });
  const told = (text: string) => {
    const { value, locate } = readYaml(text);
    try {
      validate(schema, value, locate);
    } catch (error) {
      if (error instanceof InputError) return error.message.split('\n');
    }
    return [];
  };

  it.each([
    ['screw: {pitch: 2, major: 7,95}', '1:28 screw.major: 7,95; write the decimal with a point, not a comma: 7.95'],
    ['screw: {major: 7,95 mm, pitch: 2}', /screw\.major: 7,95 mm; .*: 7\.95 mm$/],
    ['rectangle: [20,5, 14,2]', /rectangle: .*two distances; a decimal is written with a point/],
    ['rectangle: [20,5 mm, 14,2 mm]', /rectangle: .*two distances; a decimal is written with a point/],
  ])('%s', (text, line) => {
    expect(told(text)).toEqual([typeof line === 'string' ? line : expect.stringMatching(line)]);
  });

  it('is no word for lists that are wrong otherwise', () => {
    expect(told('rectangle: [left, right, 3]')[0]).not.toMatch(/point/);
  });
});
