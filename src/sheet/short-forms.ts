import * as z from 'zod';
import { fieldsAt, opened } from './schema-keys.js';

/**
 * The map that a plain value of a field stands for, as the field's own schema has it: `clamp: M4` stands for
 * `clamp: {screw: M4}`.
 *
 * @param schema a sheet's schema
 * @param path the field
 * @param value what was written there
 * @returns the map; undefined where the field has no short form of that sort
 */
export function longForm(
  schema: z.ZodType,
  path: readonly PropertyKey[],
  value: unknown,
): Readonly<Record<string, unknown>> | undefined {
  for (const field of fieldsAt(schema, path).flatMap(opened)) {
    if (!(field instanceof z.ZodPipe && field.in instanceof z.ZodTransform)) continue;
    const { data } = field.in.safeParse(value);
    if (data !== value && isRecord(data)) return data;
  }
  return undefined;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
