import type { DriveScrew } from '../drive/screw.js';
import type { GivenFit } from '../parts/common/fit-classes.js';
import { readDriveSheet } from '../pipeline/drive-sheet.js';
import type { Locate } from '../pipeline/locate-faults.js';
import { screwNamed } from '../pipeline/screw-named.js';
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
