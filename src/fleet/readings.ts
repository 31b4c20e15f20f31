import type { KnownKind } from '../pipeline/known-kind.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { holds } from '../sheet/merge.js';
import { readingOf, readingPaths } from '../sheet/reading-fields.js';
import { parseQuantity } from '../units/quantity.js';
import { canonicalJson } from './canonical.js';
import { fileFaultLine, type GivenFields, type GivenPart } from './machines.js';

/** What a cell or a field says whose reading is the template's own. */
const AS_TEMPLATE = 'as template';

/** A reading of one part, to be held against those of its fellows. */
export interface Reading {
  /** dotted path, such as `screw.major` */
  readonly field: string;
  /** in base units */
  readonly value: number;
  /** the same for parts of one template whose screws and sections are alike in all but their readings */
  readonly fellows: string;
  /** where it was written */
  readonly place: string;
}

/** Whether a value says that the template's reading is meant. */
function saysAsTemplate(value: unknown): boolean {
  return typeof value === 'string' && value.trim().toLowerCase() === AS_TEMPLATE;
}

/** A layer without the readings that it leaves to the template. */
export function withoutAsTemplate(layer: GivenFields, kind: KnownKind | undefined): GivenFields {
  if (!kind) return layer;
  return { ...layer, fields: stripped(layer.fields, kind.schema, []) };
}

function stripped(fields: Fields, schema: KnownKind['schema'], path: readonly string[]): Fields {
  const kept = Object.entries(fields).filter(
    ([key, value]) => !(saysAsTemplate(value) && readingOf(schema, [...path, key]) !== undefined),
  );
  return Object.fromEntries(
    kept.map(([key, value]) => [key, isFields(value) ? stripped(value, schema, [...path, key]) : value]),
  );
}

/**
 * What must be measured at a part's own machine and is not: the fields that its template names, and every reading for
 * which its table has a column. A field that says `as template` counts as measured.
 *
 * @returns a line a field
 */
export function unmeasured(part: GivenPart, kind: KnownKind | undefined): string[] {
  if (!kind) return [];
  const wanted = [...new Set([...part.needs, ...part.columns])];
  const missing = wanted.filter((field) => {
    const path = field.split('.');
    return readingOf(kind.schema, path) !== undefined && !part.given.some(({ fields }) => holds(fields, path));
  });
  return missing.map((field) => {
    const allowed = `not measured; give the reading, or write: ${AS_TEMPLATE}`;
    return fileFaultLine({ ...part.find(field.split('.')), path: field, value: '', allowed });
  });
}

/** The readings that were taken at a part's own machine. */
export function readingsOf(part: GivenPart, template: string, sheet: Fields, kind: KnownKind | undefined): Reading[] {
  if (!kind) return [];
  const paths = readingPaths(kind.schema);
  return paths.flatMap((field): Reading[] => {
    const path = field.split('.');
    const given = part.given.findLast(({ fields }) => holds(fields, path));
    const dimension = readingOf(kind.schema, path);
    const written = given && valueAt(given.fields, path);
    if (given === undefined || dimension === undefined || saysAsTemplate(written)) return [];
    const read = parseQuantity(written, dimension);
    if (!read.ok) return [];
    const { file, at } = given.find(path);
    const place = [file, at?.line, at?.column].filter((piece) => piece !== undefined && piece !== '').join(':');
    const alike = [...new Set(['screw', path[0]!])].map((section) => without(sheet[section], paths, [section]));
    return [{ field, value: read.quantity.value, fellows: canonicalJson([template, field, alike]), place }];
  });
}

function valueAt(fields: Fields, path: readonly string[]): unknown {
  return path.reduce<unknown>((value, key) => (isFields(value) ? value[key] : undefined), fields);
}

/** A section without its readings. */
function without(value: unknown, paths: readonly string[], path: readonly string[]): unknown {
  if (!isFields(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key]) => !paths.includes([...path, key].join('.')))
      .map(([key, inner]) => [key, without(inner, paths, [...path, key])]),
  );
}
