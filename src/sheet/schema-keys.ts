import * as z from 'zod';

/** The fields that a schema's map at `path` knows. */
export function knownKeys(schema: z.ZodType, path: readonly PropertyKey[]): string[] {
  let nodes = choices(schema);
  for (const key of path) nodes = nodes.flatMap((node) => step(node, key));
  const keys = nodes.flatMap((node) => (node instanceof z.ZodObject ? Object.keys(node.shape) : []));
  return [...new Set(keys)];
}

function step(node: z.ZodType, key: PropertyKey): z.ZodType[] {
  if (node instanceof z.ZodObject) return Object.hasOwn(node.shape, key) ? choices(node.shape[String(key)]) : [];
  if (node instanceof z.ZodArray) return choices(node.element);
  if (node instanceof z.ZodRecord) return choices(node.valueType);
  return [];
}

/** The schemas behind `optional`, `default` and `preprocess`; of a union, each of its branches. */
function choices(schema: unknown): z.ZodType[] {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return choices(schema.unwrap());
  if (schema instanceof z.ZodPipe) return choices(schema.out);
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(choices);
  return schema instanceof z.ZodType ? [schema] : [];
}
