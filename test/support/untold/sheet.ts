import { type Fields, isFields } from '../../../src/sheet/fields-map.js';

/** A sheet as a plain map. */
export type Sheet = Fields;

/** Fields that may be told in short, and what the short form stands for. */
const SHORT: Readonly<Record<string, string>> = {
  screw: 'designation',
  shaft: 'diameter',
  turned_end: 'diameter',
  printer: 'preset',
  bearing: 'designation',
};

/** What stands at a path; undefined where nothing does. */
export function at(sheet: unknown, path: string): unknown {
  return path.split('.').reduce<unknown>((one, key) => (isFields(one) ? one[key] : undefined), sheet);
}

/** A copy with a value at a path; short forms on the way are spelt out. */
export function told(sheet: Sheet, path: string, value: unknown): Sheet {
  const [key = '', ...rest] = path.split('.');
  if (rest.length === 0) return { ...sheet, [key]: value };
  const own = sheet[key];
  const map = isFields(own) ? own : own === undefined ? {} : { [SHORT[key] ?? 'value']: own };
  return { ...sheet, [key]: told(map, rest.join('.'), value) };
}
