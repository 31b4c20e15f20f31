import type { z } from 'zod';
import { type Fault, InputError, type Place, shown } from '../units/faults.js';
import { nearest } from './nearest.js';
import { dotted } from './path.js';
import { knownKeys } from './schema-keys.js';
import { withoutField } from './without-field.js';

export { dotted } from './path.js';

type Locate = (path: readonly PropertyKey[]) => Place | undefined;

/**
 * Validates a plain value against a strict schema. A known field that stands there without a value is not told, as if it
 * were missing.
 * @returns the schema's output
 * @throws InputError every mistake at once, each with its field, value and place
 */
export function validate<T extends z.ZodType>(
  schema: T,
  value: unknown,
  locate: Locate = () => undefined,
): z.output<T> {
  const result = schema.safeParse(value);
  if (result.success) return result.data;
  const blank = result.error.issues.map(({ path }) => path).find((path) => isBlank(value, path));
  if (blank) return validate(schema, withoutField(value, blank), locate);
  const faults = result.error.issues.flatMap((issue) => toFaults(issue, schema, value, locate));
  throw new InputError(faults.sort(byPlace));
}

/** Whether a field of a map stands at the end of a path, and has no value. */
function isBlank(root: unknown, path: readonly PropertyKey[]): boolean {
  const within = path.slice(0, -1).reduce<unknown>((one, step) => (isRecord(one) ? one[step] : undefined), root);
  const key = path.at(-1);
  return (
    key !== undefined &&
    isRecord(within) &&
    !Array.isArray(within) &&
    Object.hasOwn(within, key) &&
    within[key] === null
  );
}

function toFaults(issue: z.core.$ZodIssue, schema: z.ZodType, root: unknown, locate: Locate): Fault[] {
  if (issue.code === 'unrecognized_keys') {
    const known = knownKeys(schema, issue.path);
    const told = issue.keys
      .slice(0, MOST_UNKNOWN)
      .map((key) => commaKey(issue.path, key, root, locate) ?? unknownKey(issue.path, key, known, locate));
    const more = issue.keys.length - told.length;
    return more > 0 ? [...told, moreUnknown(more, issue.path, issue.keys[MOST_UNKNOWN]!, locate)] : told;
  }
  const { value, path } = reached(root, issue.path);
  const missing = value === undefined;
  const comma = inWholeNumbers(root, path) ? '; a decimal is written with a point, as in 0.2' : '';
  const allowed = (missing ? missingText(issue.message) : issue.message) + comma;
  return [located({ path: dotted(path), value: missing ? '' : shown(value), allowed }, path, locate)];
}

function missingText(message: string): string {
  return message.startsWith('is missing') || message.startsWith('needs') ? message : `is missing; ${message}`;
}

/** Who has more of them in one map has put the wrong file in. */
const MOST_UNKNOWN = 20;

function moreUnknown(count: number, path: readonly PropertyKey[], next: string, locate: Locate): Fault {
  const allowed = `and ${count} more unknown ${count === 1 ? 'field' : 'fields'}`;
  return located({ path: dotted(path), value: '', allowed }, [...path, next], locate);
}

function unknownKey(path: readonly PropertyKey[], key: string, known: readonly string[], locate: Locate): Fault {
  const near = nearest(key, known);
  const allowed = near ? `unknown field; did you mean ${near}?` : `unknown field; known here: ${known.join(', ')}`;
  return located({ path: dotted([...path, shown(key)]), value: '', allowed }, [...path, key], locate);
}

/** `{diameter: 14,2 mm}` reads as a diameter of 14 and a field called `2 mm`: the comma was meant as a decimal mark. */
function commaKey(path: readonly PropertyKey[], key: string, root: unknown, locate: Locate): Fault | undefined {
  const within = path.reduce<unknown>((value, step) => (isRecord(value) ? value[step] : undefined), root);
  if (!/^\d/.test(key) || !isRecord(within) || within[key] !== null) return undefined;
  const before = keyBefore(path, key, Object.keys(within), locate);
  const whole = before === undefined ? undefined : within[before];
  const field = [...path, before ?? key];
  const told = typeof whole === 'number' ? `${shown(whole)},${key}` : `,${key}`;
  const allowed =
    typeof whole === 'number'
      ? `write the decimal with a point, not a comma: ${shown(whole)}.${key}`
      : 'write the decimal with a point, not a comma';
  return located({ path: dotted(field), value: told, allowed }, [...path, key], locate);
}

/** The key that stands before another in the text; whole numbers come first among the keys of an object. */
function keyBefore(path: readonly PropertyKey[], key: string, keys: readonly string[], locate: Locate) {
  const placed = keys.flatMap((one) => {
    const at = locate([...path, one]);
    return at ? [{ one, order: 1e6 * at.line + at.column }] : [];
  });
  if (placed.length === keys.length) {
    const sorted = placed.sort((a, b) => a.order - b.order).map(({ one }) => one);
    return sorted[sorted.indexOf(key) - 1];
  }
  return /^\d+$/.test(key) ? undefined : keys[keys.indexOf(key) - 1];
}

/** A wrong list of whole numbers, with units or without: commas between them may have been meant as decimal marks. */
function inWholeNumbers(root: unknown, path: readonly PropertyKey[]): boolean {
  const steps = path.map((_, i) => path.slice(0, i + 1)).concat([[]]);
  const lists = steps.map((step) =>
    step.reduce<unknown>((value, key) => (isRecord(value) ? value[key] : undefined), root),
  );
  return lists.some(
    (list) =>
      Array.isArray(list) &&
      list.length > 2 &&
      list.every((one) => Number.isInteger(one) || (typeof one === 'string' && WHOLE_TEXT.test(one))),
  );
}

const WHOLE_TEXT = /^\d+(?: ?[a-z%°"]+)?$/i;

function located(fault: Fault, path: readonly PropertyKey[], locate: Locate): Fault {
  const at = locate(path);
  return at ? { ...fault, at } : fault;
}

/** The value that an issue is about. A plain value that stands for a whole map is as far as its path goes. */
function reached(root: unknown, path: readonly PropertyKey[]): { value: unknown; path: readonly PropertyKey[] } {
  let value = root;
  for (const [i, key] of path.entries()) {
    if (typeof value === 'string' || typeof value === 'number') return { value, path: path.slice(0, i) };
    value = isRecord(value) && Object.hasOwn(value, key) ? value[key] : undefined;
  }
  return { value, path };
}

function isRecord(value: unknown): value is Record<PropertyKey, unknown> {
  return typeof value === 'object' && value !== null;
}

function byPlace(a: Fault, b: Fault): number {
  return (a.at?.line ?? 0) - (b.at?.line ?? 0) || (a.at?.column ?? 0) - (b.at?.column ?? 0);
}
