import { readdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import type { DesignOptions } from '../pipeline/design.js';
import { peekProfile } from '../pipeline/peek-profile.js';
import { PRESET_FOLDERS } from '../presets/kinds.js';
import { SHIPPED } from '../presets/shipped.js';
import { PROFILE_NAME } from '../sheet/sections/profile.js';
import { type InputPlace, readInput } from './read-input.js';

const FOLDER = PRESET_FOLDERS.profile;

/**
 * The profile that a sheet names, put among the presets it is read with: looked for beside the sheet, in profiles/
 * beside it, and in profiles/ of the working folder. A sheet without a profile, or one that is nowhere, leaves all as
 * it was; then the names of those that are there go along, so that a slip of the pen can be told.
 *
 * @param text the sheet
 * @param file where it was read from; `-` is the standard input
 */
export async function withProfiles(
  text: string,
  file: string,
  place: InputPlace,
  options: DesignOptions,
): Promise<DesignOptions> {
  const name = peekProfile(text);
  if (name === undefined || !PROFILE_NAME.test(name)) return options;
  const beside = file === '-' ? place.cwd : dirname(resolve(place.cwd, file));
  const folders = [...new Set([join(beside, FOLDER), join(place.cwd, FOLDER)])];
  const own = resolve(place.cwd, file);
  for (const folder of [beside, ...folders]) {
    const path = join(folder, `${name}.yaml`);
    if (path === own || !(await names(folder)).includes(`${name}.yaml`)) continue;
    return withTexts(options, { [`${FOLDER}/${name}.yaml`]: await readInput(path, place) });
  }
  const others = (await Promise.all(folders.map(names))).flat().filter((other) => other.endsWith('.yaml'));
  return withTexts(options, Object.fromEntries(others.slice(0, 200).map((other) => [`${FOLDER}/${other}`, ''])));
}

function withTexts(options: DesignOptions, texts: Readonly<Record<string, string>>): DesignOptions {
  return { ...options, presets: { ...(options.presets ?? SHIPPED), ...texts } };
}

/** Files of a folder; none where there is no such folder. */
async function names(folder: string): Promise<string[]> {
  return readdir(folder).catch((): string[] => []);
}
