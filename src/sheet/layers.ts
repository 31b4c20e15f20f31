import type { z } from 'zod';
import { type Fields, isFields } from './fields-map.js';
import { knownKeys } from './schema-keys.js';

/**
 * What a kind of part has fields for, map within map; `profile`, which stands for material and printer, always.
 *
 * @param fields what several kinds of part share
 * @param schema of the part's kind
 */
export function fitting(fields: Fields, schema: z.ZodType, path: readonly string[] = []): Fields {
  const known = knownKeys(schema, path);
  if (known.length === 0) return fields;
  const fits = Object.entries(fields).filter(
    ([key]) => known.includes(key) || (path.length === 0 && key === 'profile'),
  );
  return Object.fromEntries(
    fits.map(([key, value]) => [key, isFields(value) ? fitting(value, schema, [...path, key]) : value]),
  );
}

/** What lies below a sheet: one that says its material, its printer or its profile takes none of the three that go with another. */
export function besides(below: Fields, sheet: Fields): Fields {
  const says = ['material', 'printer', 'profile'].filter((key) => sheet[key] !== undefined);
  if (says.length === 0) return below;
  const { profile, material, printer, ...rest } = below;
  if (says.includes('profile')) return rest;
  return {
    ...rest,
    ...(material === undefined ? {} : { material }),
    ...(printer === undefined ? {} : { printer }),
  };
}
