import { isFields } from '../sheet/fields-map.js';
/**
 * A plain value as JSON whose keys stand in order at every depth, so that equal values give equal texts.
 * Fields that are undefined are left out.
 * @example canonicalJson({ b: 1, a: [2, { d: 3, c: 4 }] }) // '{"a":[2,{"c":4,"d":3}],"b":1}'
 */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) => (isFields(part) ? ordered(part) : part));
}

function ordered(fields: Readonly<Record<string, unknown>>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(fields).sort(([a], [b]) => (a < b ? -1 : 1)));
}
