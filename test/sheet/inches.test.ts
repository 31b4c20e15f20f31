import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { KINDS } from '../../src/pipeline/kinds.js';
import { map, orShort, quantity, reading } from '../../src/sheet/fields.js';
import { inInches, isLength } from '../../src/sheet/inches.js';

/** Every quantity of a schema with its unit, by the way JSON Schema tells it: `items` for a list, `*` for any key. */
function quantitiesOf(schema: z.ZodType): readonly (readonly [path: string, unit: string])[] {
  const json = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any', reused: 'inline' });
  const found: [string, string][] = [];
  const visit = (node: unknown, path: readonly string[]) => {
    if (typeof node !== 'object' || node === null) return;
    const { properties, items, prefixItems, anyOf, additionalProperties, unit } = node as Record<string, unknown>;
    if (typeof unit === 'string') found.push([path.join('/'), unit]);
    for (const [key, inner] of Object.entries(properties ?? {})) visit(inner, [...path, key]);
    for (const [i, inner] of ((prefixItems as unknown[]) ?? []).entries()) visit(inner, [...path, `#${i}`]);
    for (const inner of (anyOf as unknown[]) ?? []) visit(inner, path);
    visit(items, [...path, '#0']);
    visit(additionalProperties, [...path, '*']);
  };
  visit(json, []);
  return found;
}

/** A sheet of that one field. */
function holding([key, ...rest]: readonly string[], leaf: unknown): unknown {
  if (key === undefined) return leaf;
  const inner = holding(rest, leaf);
  if (!key.startsWith('#')) return { [key]: inner };
  return Array.from({ length: Number(key.slice(1)) + 1 }, () => inner);
}

function leafOf(value: unknown, [key, ...rest]: readonly string[]): unknown {
  if (key === undefined) return value;
  return leafOf((value as Record<string, unknown>)[key.replace('#', '')], rest);
}

describe.each(KINDS)('every quantity of a $kind sheet', ({ schema }) => {
  const quantities = quantitiesOf(schema);

  it('is there', () => {
    expect(quantities.length).toBeGreaterThan(30);
    expect(new Set(quantities.map(([, unit]) => unit)).has('mm')).toBe(true);
  });

  it('is in inches where it is a length that stands bare, and nothing else is', () => {
    const wrong = quantities.filter(([path, unit]) => {
      const keys = path.split('/');
      const read = (leaf: unknown) => leafOf(inInches(schema, holding(keys, leaf)), keys);
      const isRight =
        unit === 'mm' ? read(0.5) === '0.5 in' && read('5/16 ± 0.001') === '5/16 ± 0.001 in' : read(0.5) === 0.5;
      return !isRight || read('8 mm') !== '8 mm';
    });
    expect(wrong).toEqual([]);
  });
});

describe('inInches', () => {
  const inner = map({ wide: quantity('length'), turned: quantity('angle').optional() });
  const schema = map({
    short: orShort(inner, (value) => ({ wide: value }), 'quantity').optional(),
    named: orShort(map({ id: z.string() }), (id) => ({ id }), 'string').optional(),
    many: z.array(z.union([reading('length'), inner])).optional(),
    angle: orShort(map({ at: quantity('angle') }), (at) => ({ at }), 'quantity').optional(),
  });

  it('spells a plain value that stands for a map with a length, and no other', () => {
    expect(inInches(schema, { short: 1, named: '8', angle: 45 })).toEqual({ short: '1 in', named: '8', angle: 45 });
    expect(inInches(schema, { short: { wide: '1 1/4', turned: 30 } })).toEqual({
      short: { wide: '1 1/4 in', turned: 30 },
    });
  });

  it('goes through lists and choices', () => {
    expect(inInches(schema, { many: [0.5, { wide: 2 }, '3 mm', 'odd'] })).toEqual({
      many: ['0.5 in', { wide: '2 in' }, '3 mm', 'odd'],
    });
  });

  it('leaves what it does not know, and gives back what it does not change', () => {
    const typed = { short: '1 mm', unknown: 1, many: null };
    expect(inInches(schema, typed)).toBe(typed);
    expect(inInches(schema, 7)).toBe(7);
  });

  it('knows lengths by their path', () => {
    expect(isLength(schema, ['short', 'wide'])).toBe(true);
    expect(isLength(schema, ['short', 'turned'])).toBe(false);
    expect(isLength(schema, ['nothing'])).toBe(false);
  });
});
