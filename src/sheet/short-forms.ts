import * as z from 'zod';
import type { ShortForms } from './edit-text.js';
import { type Fields, isFields } from './fields-map.js';
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
export function longForm(schema: z.ZodType, path: readonly PropertyKey[], value: unknown): Fields | undefined {
  for (const field of fieldsAt(schema, path).flatMap(opened)) {
    if (!(field instanceof z.ZodPipe && field.in instanceof z.ZodTransform)) continue;
    const { data } = field.in.safeParse(value);
    if (data !== value && isFields(data)) return data;
  }
  return undefined;
}

/** Short forms by the name of their field, and the field inside that they stand for: what is changed there keeps what the short form said. */
export const SHORT: ShortForms = {
  bearing: 'designation',
  clamp: 'screw',
  fit: 'class',
  float: 'sideways',
  mark: 'text',
  material: 'preset',
  outline: 'shape',
  pad: 'kind',
  printer: 'preset',
  profile: 'name',
  screw: 'designation',
  set_screw: 'screw',
  shaft: 'diameter',
};
