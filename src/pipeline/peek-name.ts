import { readYaml } from '../sheet/read-yaml.js';
import { partName } from '../sheet/sections/common.js';
import { InputError } from '../units/faults.js';

/** The name that a sheet gives its part, even where the rest of it is wrong. */
export function peekName(text: string): string | undefined {
  try {
    const { value } = readYaml(text);
    const name = typeof value === 'object' && value !== null && 'name' in value ? value.name : undefined;
    return partName.safeParse(name).data;
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
