import { editText } from '../../../src/sheet/edit-text.js';
import { type Fields, isFields } from '../../../src/sheet/fields-map.js';
import { readYaml } from '../../../src/sheet/read-yaml.js';
import { SHORT } from '../../../src/sheet/short-forms.js';

/** A part that was opened from an axis. */
export interface AxisPart {
  /** the sheet of the axis */
  readonly axis: string;
  readonly role: string;
  /** the part's whole sheet as it was opened */
  readonly opened: string;
}

/**
 * The sheet of an axis with what was changed in one of its parts, in the section of the part: that goes before what the
 * axis says of all. Comments and order of the axis stay.
 *
 * @param part where it came from
 * @param sheet the part's sheet now
 * @returns the axis, and the fields that could not be put there: lists of places, and all of a sheet that cannot be read
 */
export function writtenBack(
  { axis, role, opened }: AxisPart,
  sheet: string,
): { axis: string; left: readonly string[] } {
  const [before, after] = [fieldsOf(opened), fieldsOf(sheet)];
  if (!before || !after) return { axis, left: [role] };
  const was = new Map(leaves(before).map(([path, value]) => [path.join('.'), value]));
  const is = new Map(leaves(after).map(([path, value]) => [path.join('.'), value]));
  const all = [...was.keys(), ...is.keys()].map((path) => (is.has(path) ? path : goneFrom(after, path)));
  const changed = [...new Set(all)].filter((path) => !is.has(path) || !same(was.get(path), is.get(path)));
  const left: string[] = [];
  let made = axis;
  for (const path of changed) {
    const text = editText(made, ['parts', role, ...path.split('.')], written(is.get(path)), SHORT);
    if (stands(text, role, path, is.get(path))) made = text;
    else left.push(path);
  }
  return { axis: made, left };
}

/** The section that went with a field, or the field alone: what is taken out as a whole is no section without its fields. */
function goneFrom(after: Fields, path: string): string {
  const keys = path.split('.');
  let at: unknown = after;
  const kept = keys.findIndex((key) => {
    const stays = isFields(at) && Object.hasOwn(at, key);
    at = stays ? (at as Fields)[key] : undefined;
    return !stays;
  });
  return keys.slice(0, kept < 0 ? keys.length : kept + 1).join('.');
}

function fieldsOf(text: string): Fields | undefined {
  try {
    const { value } = readYaml(text);
    return isFields(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Whether the section of the part says so now; one that says nothing takes what the axis says. */
function stands(axis: string, role: string, path: string, value: unknown): boolean {
  const section = [role, ...path.split('.')].reduce<unknown>(
    (at, key) => (isFields(at) ? at[key] : undefined),
    fieldsOf(axis)?.parts,
  );
  return same(section ?? undefined, value ?? undefined);
}

function leaves(fields: Fields, above: readonly string[] = []): [readonly string[], unknown][] {
  return Object.entries(fields).flatMap(([key, value]): [readonly string[], unknown][] =>
    isFields(value) ? leaves(value, [...above, key]) : [[[...above, key], value]],
  );
}

function written(value: unknown): string | readonly string[] {
  if (Array.isArray(value)) return value.map(String);
  return value === undefined || value === null ? '' : String(value);
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
