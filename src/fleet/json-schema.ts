import { type JsonSchema, toJsonSchema } from '../sheet/json-schema.js';
import { fleetSchema } from './sheet.js';

/** The JSON Schema of a fleet file, for editors. */
export function fleetJsonSchema(): JsonSchema {
  return toJsonSchema(fleetSchema, 'fleet');
}
