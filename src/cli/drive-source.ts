import { type DriveScrew, driveScrewOf } from '../drive/screw.js';
import type { GivenFit } from '../parts/common/fit-classes.js';
import { readDriveSheet } from '../pipeline/drive-sheet.js';
import type { Locate } from '../pipeline/locate-faults.js';
import { nearest } from '../sheet/nearest.js';
import { parseDesignation } from '../standards/threads/designation.js';
import { ALL_SERIES } from '../standards/threads/series.js';
import { meantWords } from '../standards/threads/trade-words.js';
import { InputError } from '../units/faults.js';
import { type InputPlace, readInput } from '../work/read-input.js';

/** A screw as it was named in a call. */
export interface DriveSource {
  readonly screw: DriveScrew;
  readonly fit?: GivenFit | undefined;
  /** of a sheet: its name, its duty as typed, and where its fields stand */
  readonly sheet?: { readonly file: string; readonly duty: unknown; readonly locate: Locate };
}

/** A sheet is told from a designation by its ending; `-` is stdin. */
export function isSheet(name: string): boolean {
  return name === '-' || /\.ya?ml$/i.test(name);
}

/**
 * Opens a sheet, or reads a designation.
 * @throws InputError no such file, mistakes in the sheet, or an unknown designation
 */
export async function openDriveSource(name: string, place: InputPlace): Promise<DriveSource> {
  if (!isSheet(name)) return { screw: screwNamed(name, '') };
  const { screw, fit, duty, locate } = readDriveSheet(await readInput(name, place));
  return { screw, fit, sheet: { file: name, duty, locate } };
}

/**
 * The screw of a designation.
 * @throws InputError at `path`: what is allowed, and the nearest that is known
 */
export function screwNamed(designation: string, path: string): DriveScrew {
  try {
    return driveScrewOf(parseDesignation(designation));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const names = ALL_SERIES.map((row) => row.designation).filter((name) => digitsOf(name) === digitsOf(designation));
    const near = nearest(designation, names);
    const meant = meantWords(designation) || (near === undefined ? '' : `; did you mean ${near}?`);
    const offer = meant || '; a sheet ends in .yaml';
    throw new InputError(error.faults.map((fault) => ({ ...fault, path, allowed: `${fault.allowed}${offer}` })));
  }
}

/** A slip of the letters is mended; other numbers are another screw. */
function digitsOf(text: string): string {
  return (text.match(/\d+(?:\.\d+)?/g) ?? []).join(' ');
}
