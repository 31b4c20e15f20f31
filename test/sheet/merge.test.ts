import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson } from '../../src/fleet/canonical.js';
import { couplingSchema } from '../../src/parts/coupling/sheet.js';
import { nutSchema } from '../../src/parts/nut/sheet.js';
import { sleeveSchema } from '../../src/parts/sleeve/sheet.js';
import { replaced } from '../../src/sheet/merge.js';

describe('replaced', () => {
  it.each([
    [{ a: 1, b: { c: 2, d: 3 } }, { b: { c: 4 } }, { a: 1, b: { c: 4, d: 3 } }],
    [{ screw: 'Tr8x2' }, { screw: { major: 7.9 } }, { screw: { designation: 'Tr8x2', major: 7.9 } }],
    [{ material: { preset: 'pa12', density: 1 } }, { material: 'petg' }, { material: 'petg' }],
    [{ fit: 'running' }, { fit: { axial: 0.2 } }, { fit: { class: 'running', axial: 0.2 } }],
    [{ a: 1, b: 2 }, { a: null }, { b: 2 }],
    [{ list: [1, 2] }, { list: [3] }, { list: [3] }],
    [{ body: 5 }, { body: { length: 4 } }, { body: { length: 4 } }],
  ])('%j under %j is %j', (base, over, whole) => {
    expect(replaced(base, over, nutSchema)).toEqual(whole);
  });

  it.each([
    [
      sleeveSchema,
      { motor_end: { clamp: 'M4' } },
      { motor_end: { clamp: { count: 2 } } },
      { motor_end: { clamp: { screw: 'M4', count: 2 } } },
    ],
    [
      couplingSchema,
      { motor_hub: { set_screw: 'M4' } },
      { motor_hub: { set_screw: { joint: 'nut' } } },
      { motor_hub: { set_screw: { screw: 'M4', joint: 'nut' } } },
    ],
    [couplingSchema, { shaft: 6.35 }, { shaft: { flat: 5.8 } }, { shaft: { diameter: 6.35, flat: 5.8 } }],
    [
      couplingSchema,
      { insert: { pad: 'disc' } },
      { insert: { pad: { thickness: 2 } } },
      { insert: { pad: { kind: 'disc', thickness: 2 } } },
    ],
    [nutSchema, { limits: { wall: 2 } }, { limits: { wall: { max: 9 } } }, { limits: { wall: { min: 2, max: 9 } } }],
    [
      nutSchema,
      { printer: { hole_offset: 0.15 } },
      { printer: { hole_offset: { per_mm: 0.01 } } },
      { printer: { hole_offset: { at_zero: 0.15, per_mm: 0.01 } } },
    ],
    [
      nutSchema,
      { material: 'pa12' },
      { material: { shrink: { plane: 0.01 } } },
      { material: { preset: 'pa12', shrink: { plane: 0.01 } } },
    ],
  ])('keeps what a short form stands for (%#)', (schema, base, over, whole) => {
    expect(replaced(base, over, schema)).toEqual(whole);
  });

  it('leaves prototypes alone', () => {
    const over: Record<string, unknown> = JSON.parse('{"__proto__": {"polluted": true}}');
    const whole = replaced({}, over);
    expect(Object.hasOwn(whole, '__proto__')).toBe(true);
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });
});

describe('canonicalJson', () => {
  it('is the same for equal values, however their keys stand', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue(), { noNullPrototype: true }), (fields) => {
        const turned = Object.fromEntries(Object.entries(fields).reverse());
        expect(canonicalJson(turned)).toBe(canonicalJson(fields));
        expect(JSON.parse(canonicalJson(fields))).toEqual(JSON.parse(JSON.stringify(fields)));
      }),
    );
  });
});
