import * as z from 'zod';

/** A JSON Schema document, draft 2020-12. */
export type JsonSchema = z.core.JSONSchema.JSONSchema;

const NUMBER_OR_TEXT: readonly JsonSchema[] = [{ type: 'number' }, { type: 'string' }];

/**
 * The JSON Schema of what a person may type, for editors. It accepts all that the tool accepts; what must hold between
 * fields, and the range of a quantity, only the tool itself knows.
 *
 * @param schema a sheet's schema
 * @param title what the schema is called
 */
export function toJsonSchema(schema: z.ZodType, title: string): JsonSchema {
  const json = z.toJSONSchema(schema, {
    io: 'input',
    unrepresentable: 'any',
    override: ({ jsonSchema }) => openUp(jsonSchema),
  });
  const { $schema, ...rest } = json;
  return { ...($schema === undefined ? {} : { $schema }), title, ...rest };
}

/**
 * Turns the marks of our own fields into what may be typed there: `quantity` a number or a text, `short` a plain value
 * in place of the map, `listed` one item in place of the list.
 */
function openUp(json: Record<string, unknown>): void {
  delete json.reading;
  delete json.range;
  delete json.unit;
  if (json.quantity === true) {
    delete json.quantity;
    json.anyOf = [...NUMBER_OR_TEXT];
  }
  if (json.listed === true) {
    delete json.listed;
    alternatives(json, (list) => [list.items ?? {}, list]);
  }
  if (json.short === 'string' || json.short === 'quantity') {
    const plain = json.short === 'string' ? [{ type: 'string' }] : NUMBER_OR_TEXT;
    delete json.short;
    alternatives(json, (map) => [...plain, map]);
  }
}

/** Puts a choice in place of a schema; its description stays in front. */
function alternatives(
  json: Record<string, unknown>,
  choose: (schema: Record<string, unknown>) => readonly unknown[],
): void {
  const { description, ...schema } = json;
  for (const key of Object.keys(json)) delete json[key];
  if (description !== undefined) json.description = description;
  json.anyOf = choose(schema);
}
