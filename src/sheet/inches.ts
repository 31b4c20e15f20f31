import * as z from 'zod';
import { UNITS } from '../units/unit-table.js';
import { fieldsAt, opened } from './schema-keys.js';

/** Whether a field of a sheet is a length. */
export function isLength(schema: z.ZodType, path: readonly PropertyKey[]): boolean {
  return fieldsAt(schema, path)
    .flatMap(opened)
    .some((field) => unitOf(field) === LENGTH);
}

const LENGTH = UNITS.length.bare;

/** The unit that a schema marks a quantity with. */
function unitOf(field: z.ZodType): unknown {
  return z.globalRegistry.get(field)?.unit;
}

/**
 * A value in which each length without a unit is spelt out as inches: `0.313` as `0.313 in`. What is a length is read
 * from the marks of the schema's fields.
 *
 * @param schema of a sheet or a part of one
 * @param value  as it was typed
 * @returns the same, itself where no length stands bare
 */
export function inInches(schema: unknown, value: unknown): unknown {
  return opened(schema).reduce((typed, field) => spelt(field, typed), value);
}

/** A text of nothing but numbers: `5/16`, `0.313 ± 0.001`. */
const BARE = /^\s*[+-]?[\d./ ]*\d\s*(?:(?:±|\+\/?-)\s*[\d.]+)?\s*$/;

/** One length that may stand without its unit. */
export function speltInches(value: unknown): unknown {
  return typeof value === 'number' || (typeof value === 'string' && BARE.test(value)) ? `${value} in` : value;
}

function spelt(field: z.ZodType, value: unknown): unknown {
  if (unitOf(field) !== undefined) return unitOf(field) === LENGTH ? speltInches(value) : value;
  if (field instanceof z.ZodPipe) return field.in instanceof z.ZodTransform ? speltShort(field, value) : value;
  if (field instanceof z.ZodArray) return eachOf(value, () => field.element);
  if (field instanceof z.ZodTuple) return eachOf(value, (i) => field.def.items[i]);
  if (!isMap(value)) return value;
  if (field instanceof z.ZodRecord) return eachField(value, () => field.valueType);
  return field instanceof z.ZodObject
    ? eachField(value, (key) => (Object.hasOwn(field.shape, key) ? field.shape[key] : undefined))
    : value;
}

/** A plain value that stands for a map is a length where the map's field is one. */
function speltShort(field: z.ZodPipe, value: unknown): unknown {
  const { data } = (field.in as z.ZodType).safeParse(value);
  if (data === value || data === undefined) return inInches(field.out, value);
  return inInches(field.out, data) === data ? value : speltInches(value);
}

function eachOf(value: unknown, schemaOf: (index: number) => unknown): unknown {
  if (!Array.isArray(value)) return value;
  const items = value.map((one: unknown, i) => inInches(schemaOf(i), one));
  return items.every((one, i) => one === value[i]) ? value : items;
}

function eachField(value: Readonly<Record<string, unknown>>, schemaOf: (key: string) => unknown): unknown {
  const entries = Object.entries(value).map(([key, one]) => [key, inInches(schemaOf(key), one)] as const);
  return entries.every(([key, one]) => one === value[key]) ? value : Object.fromEntries(entries);
}

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
