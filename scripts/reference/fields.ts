// The fields of a sheet as rows of a table, read from its schema.

import { stringify } from 'yaml';
import * as z from 'zod';

type Json = z.core.JSONSchema.JSONSchema & { readonly [mark: string]: unknown };

/** One field: `screw.crests.count`. */
export interface FieldRow {
  readonly path: string;
  readonly required: boolean;
  readonly what: string;
  readonly allowed: string;
  readonly unit: string;
}

/** What is known of a field besides its schema. */
export interface FieldFacts {
  readonly defaults: ReadonlyMap<string, string>;
  readonly examples: ReadonlyMap<string, string>;
}

/** Every field of a schema, in the order of the schema; a map stands before its fields. */
export function fieldRows(schema: z.ZodType): FieldRow[] {
  const json = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) as Json;
  return inside(json, '');
}

function inside(json: Json, path: string): FieldRow[] {
  const needed = new Set(json.required ?? []);
  const own = Object.entries(json.properties ?? {}).flatMap(([key, field]) =>
    rowsOf(field as Json, path === '' ? key : `${path}.${key}`, needed.has(key)),
  );
  const named = json.additionalProperties;
  const free = typeof named === 'object' ? rowsBelow(named as Json, `${path}.NAME`) : [];
  return [...own, ...free];
}

function rowsOf(json: Json, path: string, required: boolean): FieldRow[] {
  const row = {
    path,
    required,
    what: whatOf(json),
    allowed: allowedOf(json),
    unit: unitOf(json),
  };
  return [row, ...rowsBelow(json, path)];
}

/** The fields of a map, of the items of a list, and of every map that may stand there. */
function rowsBelow(json: Json, path: string): FieldRow[] {
  const items = typeof json.items === 'object' ? rowsBelow(json.items as Json, `${path}[]`) : [];
  const choices = (json.anyOf ?? []).flatMap((one) => rowsBelow(one as Json, path));
  const rows = [...inside(json, path), ...items, ...choices];
  const seen = new Set<string>();
  return rows.filter((row) => !seen.has(row.path) && seen.add(row.path));
}

/** What a field is in words; its unit and its limits have columns of their own. */
function whatOf({ description = '', reading }: Json): string {
  const words = description
    .split('; ')
    .filter((part) => !/^bare numbers are |^may carry its uncertainty|^a percentage such as/.test(part));
  return [...words.filter((part) => part !== ''), ...(reading ? ['a reading: may carry its ±'] : [])].join('; ');
}

function unitOf(json: Json): string {
  const first = json.quantity ? json : (json.prefixItems?.[0] ?? json.items);
  return typeof first === 'object' ? String((first as Json).unit ?? '') : '';
}

/** What may be typed: words, numbers between bounds, text, a map, a list. */
function allowedOf(json: Json): string {
  const short = json.short === 'string' ? 'a word, or ' : json.short === 'quantity' ? 'a number, or ' : '';
  return short + plainly(json);
}

function plainly(json: Json): string {
  if (json.const !== undefined) return code(json.const);
  if (json.enum) return json.enum.map(code).join(', ');
  if (json.quantity) return String(json.range ?? 'any');
  if (json.anyOf) return [...new Set(json.anyOf.map((one) => allowedOf(one as Json)))].filter(Boolean).join('; or ');
  if (json.prefixItems) return `[${json.prefixItems.map((one) => plainly(one as Json)).join(', ')}]`;
  if (json.type === 'array') return listed(json);
  if (json.type === 'object') return 'a map';
  if (json.type === 'integer' || json.type === 'number') return betweenNumbers(json);
  if (json.type === 'boolean') return '`yes`, `no`';
  if (json.type === 'string') return json.maxLength ? `text, at most ${json.maxLength} characters` : 'text';
  return '';
}

function betweenNumbers({ minimum, exclusiveMinimum, maximum }: Json): string {
  const low = minimum === undefined ? exclusiveMinimum : minimum;
  const from = low === undefined ? '' : `${minimum === undefined ? 'above' : 'from'} ${low} `;
  return `${from}${maximum === undefined ? '' : `to ${maximum}`}`.trim();
}

function listed(json: Json): string {
  const item = typeof json.items === 'object' ? plainly(json.items as Json) : '';
  const one = json.listed ? 'one, or a list' : 'a list';
  return item === '' || item === 'a map' ? one : `${one}: ${item}`;
}

function code(value: unknown): string {
  return `\`${String(value)}\``;
}

/** The table of the fields, Markdown. */
export function fieldTable(rows: readonly FieldRow[], { defaults, examples }: FieldFacts): string {
  const cells = rows.map((row) => [
    code(row.path) + (row.required ? ' *' : ''),
    row.what,
    row.allowed,
    row.unit,
    defaults.get(row.path) ?? '',
    examples.has(row.path) ? code(examples.get(row.path)) : '',
  ]);
  return table(['field', 'what', 'allowed', 'unit', 'left out', 'example'], cells);
}

/** A table in Markdown. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** The values of sheets by field, the first that is met: what a person would type there. */
export function exampleValues(sheets: readonly unknown[]): Map<string, string> {
  const found = new Map<string, string>();
  const visit = (value: unknown, path: string) => {
    if (Array.isArray(value)) for (const item of value) if (isMap(item)) visit(item, `${path}[]`);
    if (isMap(value))
      for (const [key, inner] of Object.entries(value)) visit(inner, path === '' ? key : `${path}.${key}`);
    else if (path !== '' && value !== null && value !== undefined && !found.has(path)) {
      const text = stringify(value, { collectionStyle: 'flow', lineWidth: 0, flowCollectionPadding: false }).trim();
      if (text.length <= 44 && !text.includes('\n')) found.set(path, text);
    }
  };
  for (const sheet of sheets) visit(sheet, '');
  return found;
}

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
