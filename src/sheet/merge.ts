import type { z } from 'zod';
import { type Fields, isFields } from './fields-map.js';
import { longForm } from './short-forms.js';

/**
 * The base with fields replaced, map within map; null takes a field out, and a list is replaced as a whole. A plain
 * value that stands for a map, such as `screw: Tr8x2`, is kept beside the fields that are put over it; one that is put
 * over a map takes its place.
 *
 * @param base what lies below
 * @param over what is put over it
 * @param schema of the part's kind: it knows what its plain values stand for
 * @param path where in the sheet both are
 * @example replaced({ screw: 'Tr8x2' }, { screw: { major: 7.9 } }, nutSchema) // { screw: { designation: 'Tr8x2', major: 7.9 } }
 */
export function replaced(base: Fields, over: Fields, schema?: z.ZodType, path: readonly string[] = []): Fields {
  const all = new Map(Object.entries(base));
  for (const [key, value] of Object.entries(over)) {
    const here = [...path, key];
    if (value === null) all.delete(key);
    else all.set(key, isFields(value) ? replaced(asMap(all.get(key), schema, here), value, schema, here) : value);
  }
  return Object.fromEntries(all);
}

function asMap(value: unknown, schema: z.ZodType | undefined, path: readonly string[]): Fields {
  if (isFields(value)) return value;
  const stands =
    value === undefined || value === null || schema === undefined ? undefined : longForm(schema, path, value);
  return stands ?? {};
}

/** Whether a map holds a value of its own at a path. */
export function holds(fields: unknown, path: readonly PropertyKey[]): boolean {
  let value = fields;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return false;
    value = Reflect.get(value, key);
  }
  return true;
}
