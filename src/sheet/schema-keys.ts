import * as z from 'zod';

/** The fields that a schema's map at `path` knows. */
export function knownKeys(schema: z.ZodType, path: readonly PropertyKey[]): string[] {
  const nodes = fieldsAt(schema, path).flatMap(choices);
  const keys = nodes.flatMap((node) => (node instanceof z.ZodObject ? Object.keys(node.shape) : []));
  return [...new Set(keys)];
}

/** The schemas of a field, one for each branch of the unions above it; none where the schema knows no such field. */
export function fieldsAt(schema: z.ZodType, path: readonly PropertyKey[]): z.ZodType[] {
  let nodes: z.ZodType[] = [schema];
  for (const key of path) nodes = nodes.flatMap(choices).flatMap((node) => child(node, key));
  return nodes;
}

/** What a schema is once it is no longer optional and no longer a union, preprocessing kept. */
export function opened(schema: unknown): z.ZodType[] {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return opened(schema.unwrap());
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(opened);
  return schema instanceof z.ZodType ? [schema] : [];
}

function child(node: z.ZodType, key: PropertyKey): z.ZodType[] {
  if (node instanceof z.ZodObject) return Object.hasOwn(node.shape, key) ? [node.shape[String(key)]] : [];
  if (node instanceof z.ZodArray) return [node.element].flatMap(opened);
  if (node instanceof z.ZodRecord) return [node.valueType].flatMap(opened);
  return [];
}

/** The schemas behind `optional`, `default` and `preprocess`; of a union, each of its branches. */
function choices(schema: unknown): z.ZodType[] {
  return opened(schema).flatMap((one) => (one instanceof z.ZodPipe ? choices(one.out) : [one]));
}
