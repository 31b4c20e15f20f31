import * as z from 'zod';
import type { Dimension } from '../units/unit-table.js';
import { fieldsAt, opened } from './schema-keys.js';

/** What a field that is read off an instrument measures; undefined where the field is no reading. */
export function readingOf(schema: z.ZodType, path: readonly PropertyKey[]): Dimension | undefined {
  for (const field of fieldsAt(schema, path).flatMap(opened)) {
    const about = z.globalRegistry.get(field)?.reading;
    if (about !== undefined) return about;
  }
  return undefined;
}

/** Every field of a schema that is read off an instrument, by its dotted path; fields inside lists aside. */
export function readingPaths(schema: z.ZodType): string[] {
  const found: string[] = [];
  collect(schema, [], found);
  return [...new Set(found)];
}

function collect(schema: unknown, path: readonly string[], found: string[]): void {
  for (const field of opened(schema)) {
    if (z.globalRegistry.get(field)?.reading !== undefined) found.push(path.join('.'));
    else if (field instanceof z.ZodPipe) collect(field.out, path, found);
    else if (field instanceof z.ZodObject)
      for (const [key, inner] of Object.entries(field.shape)) collect(inner, [...path, key], found);
  }
}

declare module 'zod' {
  interface GlobalMeta {
    /** the field is read off an instrument, and measures this */
    readonly reading?: Dimension;
  }
}
