/** A map as a sheet holds it. */
export type Fields = Readonly<Record<string, unknown>>;

/** Whether a value is a map of fields. */
export function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
