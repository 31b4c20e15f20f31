import { dotted } from '../sheet/path.js';
import { significant } from '../units/format.js';
import type { Report } from './report.js';

/**
 * A report as text: keys in the order of the report, numbers to nine significant digits, two blanks of indent.
 * @returns the text, a line break at its end
 * @throws Error a number is not finite
 */
export function reportJson(report: Report): string {
  return jsonText(report);
}

/**
 * Any plain answer in the same form.
 * @throws Error a number is not finite: JSON has no word for it, and a null would say that nothing was measured
 */
export function jsonText(value: unknown): string {
  return `${textOf(value)}\n`;
}

/**
 * The same text of a map, piece by piece: a field that is no array and can be gone through is written as a list, an item at a time.
 * @throws Error a number is not finite
 */
export function* jsonPieces(fields: Readonly<Record<string, unknown>>): Iterable<string> {
  let before = '{\n';
  for (const [key, value] of Object.entries(fields)) {
    if (value === undefined) continue;
    yield `${before}  ${JSON.stringify(key)}: `;
    if (isStream(value)) yield* listPieces(value);
    else yield indented(value, '  ');
    before = ',\n';
  }
  yield before === ',\n' ? '\n}\n' : '{}\n';
}

function* listPieces(items: Iterable<unknown>): Iterable<string> {
  let before = '[\n    ';
  for (const item of items) {
    yield before + indented(item, '    ');
    before = ',\n    ';
  }
  yield before.startsWith(',') ? '\n  ]' : '[]';
}

function isStream(value: unknown): value is Iterable<unknown> {
  return typeof value === 'object' && value !== null && Symbol.iterator in value && !Array.isArray(value);
}

function indented(value: unknown, indent: string): string {
  return textOf(value).replaceAll('\n', `\n${indent}`);
}

function textOf(value: unknown): string {
  return JSON.stringify(
    value,
    (_, part: unknown) => (typeof part === 'number' ? significant(finite(part, value)) : part),
    2,
  );
}

/**
 * A value as one line of JSON, its numbers as they are.
 * @throws Error a number is not finite
 */
export function jsonLine(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) => (typeof part === 'number' ? finite(part, value) : part));
}

function finite(part: number, whole: unknown): number {
  if (Number.isFinite(part)) return part;
  throw new Error(`a number is not finite: ${dotted(pathTo(part, whole) ?? [])} is ${part}`);
}

/** Where a number stands in what holds it. */
function pathTo(sought: number, value: unknown): PropertyKey[] | undefined {
  if (Object.is(value, sought)) return [];
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, part] of Object.entries(value)) {
    const below = pathTo(sought, part);
    if (below) return [Array.isArray(value) ? Number(key) : key, ...below];
  }
  return undefined;
}
