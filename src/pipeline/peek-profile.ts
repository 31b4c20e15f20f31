import { isFields } from '../sheet/fields-map.js';
import { readYaml } from '../sheet/read-yaml.js';
import { profileSection } from '../sheet/sections/profile.js';
import { InputError } from '../units/faults.js';

/** The profiles that a sheet and its sections name, in small letters, even where the rest of it is wrong. */
export function peekProfiles(text: string): string[] {
  if (!text.includes('profile')) return [];
  try {
    const { value } = readYaml(text);
    if (!isFields(value)) return [];
    const sections = isFields(value.parts) ? Object.values(value.parts) : [];
    const names = [value, ...sections].flatMap((one) => (isFields(one) ? (nameIn(one.profile) ?? []) : []));
    return [...new Set(names)];
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

function nameIn(profile: unknown): string | undefined {
  return profile === undefined ? undefined : profileSection.safeParse(profile).data?.name.trim().toLowerCase();
}
