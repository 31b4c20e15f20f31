import { readYaml } from '../sheet/read-yaml.js';
import { profileSection } from '../sheet/sections/profile.js';
import { InputError } from '../units/faults.js';

/** The profile that a sheet names, in small letters, even where the rest of it is wrong. */
export function peekProfile(text: string): string | undefined {
  if (!text.includes('profile')) return undefined;
  try {
    const { value } = readYaml(text);
    if (typeof value !== 'object' || value === null || !('profile' in value)) return undefined;
    return profileSection.safeParse(value.profile).data?.name.trim().toLowerCase();
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
