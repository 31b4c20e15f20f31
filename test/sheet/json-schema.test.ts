import Ajv from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { nutSchema } from '../../src/parts/nut/sheet.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import { quantity } from '../../src/sheet/fields.js';
import { toJsonSchema } from '../../src/sheet/json-schema.js';
import { dutySection } from '../../src/sheet/sections/duty.js';
import { holesSection } from '../../src/sheet/sections/holes.js';
import { limitsSection } from '../../src/sheet/sections/limits.js';
import { materialSection } from '../../src/sheet/sections/material.js';
import { printerSection } from '../../src/sheet/sections/printer.js';
import { screwSection } from '../../src/sheet/sections/screw.js';

const SECTIONS: Readonly<Record<string, z.ZodType>> = {
  screw: screwSection,
  duty: dutySection,
  holes: holesSection,
  limits: limitsSection,
  material: materialSection,
  printer: printerSection,
};

function accepts(section: string, value: unknown): boolean {
  const validator = new Ajv.default({ strict: true, allowUnionTypes: true });
  return validator.compile(toJsonSchema(SECTIONS[section]!, section))(value) === true;
}

describe('toJsonSchema', () => {
  it.each(Object.keys(SECTIONS))('of %s is a valid schema of draft 2020-12, with a title', (section) => {
    const schema = toJsonSchema(SECTIONS[section]!, section);
    expect(schema).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema', title: section });
    expect(new Ajv.default().validateSchema(schema)).toBe(true);
    expect(JSON.stringify(schema)).not.toMatch(/"(quantity|short)":/);
  });

  it.each<[string, unknown]>([
    ['screw', 'Tr8x2'],
    ['screw', { form: 'trapezoidal', major: '7.95 ± 0.02 mm', pitch: 2 }],
    ['screw', { form: 'acme', major: '5/16 in', crests: { count: 10, length: '20 mm' } }],
    ['duty', {}],
    [
      'duty',
      { axis: 'vertical', load: '25 N', moving: '10 %', motor: { torque: 0.4 }, layer_heights: [0.1, '0.2 mm'] },
    ],
    ['holes', { count: 4, circle: 23, screw: 'M3' }],
    ['holes', { rectangle: ['20 mm', 14], diameter: '3.4 mm' }],
    ['limits', { wall: 2, 'wear-pv': '0.1 MPa m/s', heat: { min: 10 } }],
    ['material', 'pa12'],
    ['material', { preset: 'pa12', shrink: { plane: '1 %', axial: 0.006 }, wear: 0.2 }],
    ['printer', 'nozzle-0.4-layer-0.12'],
    ['printer', { nozzle: '0.4 mm', hole_offset: 0.15, outside_offset: '0.1 mm', compensation: 'file' }],
    ['printer', { hole_offset: { at_zero: '0.1 mm', per_mm: 0.004 }, compensation: { shrink: 'slicer' } }],
  ])('%s accepts %j, as the tool does', (section, value) => {
    expect(SECTIONS[section]!.safeParse(value).success).toBe(true);
    expect(accepts(section, value)).toBe(true);
  });

  it.each<[string, unknown]>([
    ['screw', { pich: 2 }],
    ['screw', { major: [8] }],
    ['duty', { axis: 'up' }],
    ['duty', 'vertical'],
    ['holes', { count: 1.5 }],
    ['limits', { wall: { least: 2 } }],
    ['material', { shrink: '1 %' }],
    ['printer', { hole_offset: { at_zero: 0.1 } }],
    ['printer', true],
  ])('%s refuses %j, as the tool does', (section, value) => {
    expect(SECTIONS[section]!.safeParse(value).success).toBe(false);
    expect(accepts(section, value)).toBe(false);
  });

  it('accepts one item where a list is marked so', () => {
    const listed = z.array(quantity('length')).min(1).meta({ listed: true, description: 'readings' });
    const schema = toJsonSchema(z.strictObject({ major: listed }), 'readings');
    const check = new Ajv.default({ allowUnionTypes: true }).compile(schema);
    expect([{ major: 8 }, { major: '8 mm' }, { major: [8, '8 mm'] }].map((value) => check(value))).toEqual([
      true,
      true,
      true,
    ]);
    expect([{ major: [] }, { major: [true] }, {}].map((value) => check(value))).toEqual([false, false, false]);
  });

  it('accepts the nut sheets that ship', () => {
    const check = new Ajv.default({ allowUnionTypes: true }).compile(toJsonSchema(nutSchema, 'nut'));
    const sheets = Object.entries(SHIPPED).filter(([path]) => path.startsWith('sheets/'));
    const nuts = sheets.map(([, text]) => parse(text)).filter((sheet) => sheet.part === 'nut');
    expect(nuts.length).toBeGreaterThan(0);
    for (const sheet of nuts) {
      check(sheet);
      expect(check.errors ?? []).toEqual([]);
    }
  });

  it('accepts whatever the tool accepts', () => {
    const words = fc.constantFrom(
      'trapezoidal',
      'Tr8x2',
      '8 mm',
      '2 mm',
      '7.95 ± 0.02 mm',
      '1 %',
      'file',
      'M3',
      'vertical',
      'pa12',
    );
    const leaf = fc.oneof(words, fc.constantFrom(0, 0.15, 2, 4, 8));
    const names = fc.constantFrom(
      'form',
      'major',
      'pitch',
      'starts',
      'count',
      'circle',
      'diameter',
      'screw',
      'nozzle',
      'axis',
      'span',
      'preset',
      'shrink',
      'plane',
      'hole_offset',
      'at_zero',
      'per_mm',
    );
    const tree = fc.oneof(
      leaf,
      fc.dictionary(names, fc.oneof(leaf, fc.dictionary(names, leaf, { maxKeys: 3 })), { maxKeys: 4 }),
    );
    const validator = new Ajv.default({ allowUnionTypes: true });
    const compiled = Object.entries(SECTIONS).map(
      ([name, schema]) => [schema, validator.compile(toJsonSchema(schema, name))] as const,
    );
    fc.assert(
      fc.property(tree, (value) => {
        for (const [schema, check] of compiled) if (schema.safeParse(value).success) expect(check(value)).toBe(true);
      }),
      { numRuns: 1500 },
    );
  });
});
