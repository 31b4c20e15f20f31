import { type JsonSchema, toJsonSchema } from '../sheet/json-schema.js';
import { resultsSchema } from './results.js';

/** The JSON Schema of a file of readings, for editors. */
export function resultsJsonSchema(): JsonSchema {
  return toJsonSchema(resultsSchema, 'results');
}
