import { KINDS } from '../pipeline/kinds.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { type JsonSchema, toJsonSchema } from '../sheet/json-schema.js';
import { axisSchema } from './sheet.js';

/**
 * The JSON Schema of the sheet of an axis, for editors: a section with the name of a kind is offered the fields of that kind,
 * none of which it must have, since the axis may say it.
 */
export function axisJsonSchema(): JsonSchema {
  const whole = toJsonSchema(axisSchema, 'axis sheet');
  const other = { type: 'object', required: ['part'], properties: { part: { type: 'string' } } } as const;
  const sections = KINDS.map(({ kind, schema }) => [
    kind,
    { anyOf: [withoutDuties(toJsonSchema(schema, `${kind} section`)), other] },
  ]);
  const { parts } = whole.properties ?? {};
  if (!isFields(parts)) throw new TypeError('the sheet of an axis has no parts');
  return {
    ...whole,
    properties: { ...whole.properties, parts: { ...(parts as JsonSchema), properties: Object.fromEntries(sections) } },
  };
}

/** A schema in which nothing must be given. */
function withoutDuties(schema: JsonSchema): Fields {
  const { required: _, $schema: _s, ...rest } = schema as Fields;
  return Object.fromEntries(Object.entries(rest).map(([key, value]) => [key, eased(value)]));
}

function eased(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(eased);
  return isFields(value) ? withoutDuties(value as JsonSchema) : value;
}
