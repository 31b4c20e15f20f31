import { readdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import type { DesignOptions } from '../pipeline/design.js';
import { peekProfiles } from '../pipeline/peek-profile.js';
import { PRESET_FOLDERS } from '../presets/kinds.js';
import { SHIPPED } from '../presets/shipped.js';
import { PROFILE_NAME } from '../sheet/sections/profile.js';
import { type InputPlace, readInput } from './read-input.js';

const FOLDER = PRESET_FOLDERS.profile;

/**
 * The profiles that a sheet names, put among the presets it is read with: looked for beside the sheet, in profiles/
 * beside it, and in profiles/ of the working folder. A sheet without a profile leaves all as it was. Where one is nowhere
 * the names of those that are there go along, so that a slip of the pen can be told.
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
  let known = options;
  for (const name of peekProfiles(text)) known = await withProfile(name, file, place, known);
  return known;
}

async function withProfile(
  name: string,
  file: string,
  place: InputPlace,
  options: DesignOptions,
): Promise<DesignOptions> {
  if (!PROFILE_NAME.test(name)) return options;
  const beside = file === '-' ? place.cwd : dirname(resolve(place.cwd, file));
  const folders = [...new Set([join(beside, FOLDER), join(place.cwd, FOLDER)])];
  const own = resolve(place.cwd, file);
  for (const folder of [beside, ...folders]) {
    const path = join(folder, `${name}.yaml`);
    if (path === own || !(await names(folder)).includes(`${name}.yaml`)) continue;
    return withTexts(options, { [`${FOLDER}/${name}.yaml`]: await readInput(path, place) });
  }
  const others = (await Promise.all(folders.map(names))).flat().filter((other) => other.endsWith('.yaml'));
  const there = options.presets ?? SHIPPED;
  const unread = others.map((other) => `${FOLDER}/${other}`).filter((path) => there[path] === undefined);
  return withTexts(options, Object.fromEntries(unread.slice(0, 200).map((path) => [path, ''])));
}

function withTexts(options: DesignOptions, texts: Readonly<Record<string, string>>): DesignOptions {
  return { ...options, presets: { ...(options.presets ?? SHIPPED), ...texts } };
}

/** Files of a folder; none where there is no such folder. */
async function names(folder: string): Promise<string[]> {
  return readdir(folder).catch((): string[] => []);
}
