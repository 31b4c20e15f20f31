import { parseDesignation } from '../standards/threads/designation.js';
import { InputError } from '../units/faults.js';
import type { PresetData } from './kinds.js';
import { presetIds, readPreset } from './read-preset.js';
import type { PresetTexts } from './texts.js';

/** What is known of a common screw beyond its designation. */
export interface ScrewPreset {
  readonly id: string;
  readonly title: string;
  /** as a sheet may hold it */
  readonly designation: string;
  /** the printer preset that prints its nut well; undefined where a pilot hole is printed and tapped */
  readonly suits?: string;
  /** sizes copied from the source, in mm */
  readonly expect?: NonNullable<PresetData<'screw'>['expect']>;
}

/**
 * A screw preset by its name (`tr8x8-p2`) or its designation (`Tr8x8(P2)`), the hand aside.
 * @throws InputError no such preset, at `screw`
 */
export function resolveScrewPreset(name: string, presets: PresetTexts): ScrewPreset {
  const known = presetIds('screw', presets);
  const id = known.includes(name) ? name : (idOfDesignation(name) ?? name);
  const { title, data } = readPreset('screw', id, presets);
  return {
    id,
    title,
    designation: data.designation,
    ...(data.suits === PILOT_AND_TAP ? {} : { suits: data.suits }),
    ...(data.expect === undefined ? {} : { expect: data.expect }),
  };
}

/** What a thread preset says in place of a printer, where no common nozzle prints its nut well. */
export const PILOT_AND_TAP = 'pilot-and-tap';

/** The name that the preset of a designation has: its normalised text, small, every other sign a hyphen. */
export function screwPresetId(designation: string): string {
  return designation
    .toLowerCase()
    .replace(/[^a-z0-9.]+/g, '-')
    .replace(/^-+|-+$/g, '');
}

function idOfDesignation(text: string): string | undefined {
  try {
    return screwPresetId(parseDesignation(text).text.replace(/-LH$/, ''));
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
