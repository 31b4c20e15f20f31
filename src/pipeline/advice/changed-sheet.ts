import { stringify } from 'yaml';
import type { Setting } from '../../judge/advice.js';
import { isLength } from '../../sheet/inches.js';
import { SHORT } from '../../sheet/short-forms.js';
import { findKind } from '../find-kind.js';
import { KINDS } from '../kinds.js';
import type { Changes } from './knob.js';

type Tree = { readonly [key: string]: unknown };

/** A copy of a plain sheet with some fields changed. */
export function changedSheet(sheet: object, changes: Changes): Tree {
  const spelled = Object.entries(spelt(sheet, changes));
  return spelled.reduce<Tree>((made, [path, value]) => set(made, path.split('.'), value), { ...sheet });
}

/**
 * Changes as they are put into a sheet: a length says its unit where bare ones are inches.
 *
 * @param sheet      a plain sheet
 * @param changes    values by path, lengths in mm
 * @param isLengthAt whether a length stands at a path of that sheet
 * @example spelt({ units: 'inch', part: 'nut' }, { 'body.length': 18 }) // { 'body.length': '18 mm' }
 */
export function spelt(sheet: Tree | object, changes: Changes, isLengthAt = lengthsOf(sheet)): Changes {
  if (!('units' in sheet) || sheet.units !== 'inch') return changes;
  return Object.fromEntries(
    Object.entries(changes).map(([path, value]) => {
      const isBare = typeof value === 'number' && isLengthAt(path.split('.'));
      return [path, isBare ? `${value} mm` : value];
    }),
  );
}

function lengthsOf(sheet: Tree | object): (path: readonly string[]) => boolean {
  const kind = findKind(KINDS, 'part' in sheet ? sheet.part : undefined);
  return (path) => kind !== undefined && isLength(kind.schema, path);
}

function set(tree: Tree, [key = '', ...rest]: readonly string[], value: Setting): Tree {
  if (rest.length === 0) return { ...tree, [key]: value };
  return { ...tree, [key]: set(asMap(tree[key], key), rest, value) };
}

function asMap(value: unknown, key: string): Tree {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return { ...value };
  const short = SHORT[key];
  return value === undefined || value === null || short === undefined ? {} : { [short]: value };
}

/** The sections that changed, one line each, to paste in place of those of the sheet. */
export function changedLines(sheet: object, changes: Changes): string[] {
  const changed = changedSheet(sheet, changes);
  const sections = [...new Set(Object.keys(changes).map((path) => path.split('.')[0]!))];
  return sheetLines(changed, sections);
}

/** Sections of a sheet, one line each. */
export function sheetLines(sheet: Tree, sections = Object.keys(sheet)): string[] {
  return sections.map((key) =>
    stringify({ [key]: sheet[key] }, { collectionStyle: 'flow', flowCollectionPadding: false, lineWidth: 0 })
      .trim()
      .replace(/^\{([\s\S]*)\}$/, '$1')
      .replace(/\s*\n\s*/g, ' ')
      .trim(),
  );
}
