import { z } from 'zod';

/** The fields that a schema's map at `path` knows. */
export function knownKeys(schema: z.ZodType, path: readonly PropertyKey[]): string[] {
  let node: z.ZodType | undefined = unwrapped(schema);
  for (const key of path) node = node && step(node, key);
  return node instanceof z.ZodObject ? Object.keys(node.shape) : [];
}

function step(node: z.ZodType, key: PropertyKey): z.ZodType | undefined {
  if (node instanceof z.ZodObject) return childOf(node.shape[String(key)]);
  if (node instanceof z.ZodArray) return childOf(node.element);
  if (node instanceof z.ZodRecord) return childOf(node.valueType);
  return undefined;
}

function childOf(schema: unknown): z.ZodType | undefined {
  return schema instanceof z.ZodType ? unwrapped(schema) : undefined;
}

/** The schema behind `optional`, `default` and `preprocess`. */
function unwrapped(schema: z.ZodType): z.ZodType {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return unwrapped(schema.unwrap() as z.ZodType);
  if (schema instanceof z.ZodPipe) return unwrapped(schema.out as z.ZodType);
  return schema;
}
