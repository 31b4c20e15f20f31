import { type JsonSchema, toJsonSchema } from '../sheet/json-schema.js';
import { nearest } from '../sheet/nearest.js';
import { fault } from '../units/faults.js';
import { findKind } from './find-kind.js';
import { KINDS } from './kinds.js';
import type { KnownKind } from './known-kind.js';

/**
 * The JSON Schema of a kind's sheet, or of any sheet.
 * @param name   a kind of part; any unless given
 * @param kinds  the part kinds
 * @param others further names that the caller knows, to be offered where there is no such kind
 * @throws InputError there is no such kind
 */
export function sheetSchema(
  name?: string,
  kinds: readonly KnownKind[] = KINDS,
  others: readonly string[] = [],
): JsonSchema {
  if (name === undefined) {
    const [first, ...rest] = kinds.map(schemaOf);
    return rest.length === 0 && first ? first : { title: 'part sheet', anyOf: kinds.map(schemaOf) };
  }
  const kind = findKind(kinds, name);
  if (kind) return schemaOf(kind);
  const names = [...kinds.map((known) => known.kind), ...others];
  const near = nearest(name, names);
  throw fault('', name, near ? `unknown kind; did you mean ${near}?` : `unknown kind; known: ${names.join(', ')}`);
}

function schemaOf({ kind, schema }: KnownKind): JsonSchema {
  return toJsonSchema(schema, `${kind} sheet`);
}
