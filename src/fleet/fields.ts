import type { Fields } from './sheet.js';

/** Where a plain value may stand for a map, and the field of the map that it means. */
const SHORT_FOR: Readonly<Record<string, string>> = {
  screw: 'designation',
  material: 'preset',
  printer: 'preset',
  fit: 'class',
  shaft: 'diameter',
};

/** Whether a value is a map of fields. */
export function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * The base with fields replaced, map within map; null takes a field out, and a list is replaced as a whole. A plain
 * value that stands for a map, such as `screw: Tr8x2`, is kept beside the fields that are put over it.
 * @example replaced({ screw: 'Tr8x2' }, { screw: { major: 7.9 } }) // { screw: { designation: 'Tr8x2', major: 7.9 } }
 */
export function replaced(base: Fields, over: Fields): Fields {
  const all = new Map(Object.entries(base));
  for (const [key, value] of Object.entries(over)) {
    if (value === null) all.delete(key);
    else all.set(key, isFields(value) ? replaced(asMap(key, all.get(key)), value) : value);
  }
  return Object.fromEntries(all);
}

function asMap(key: string, value: unknown): Fields {
  if (isFields(value)) return value;
  const long = SHORT_FOR[key];
  const isPlain = typeof value === 'string' || typeof value === 'number';
  return long !== undefined && isPlain ? { [long]: value } : {};
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
