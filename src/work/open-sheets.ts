import type { AxisDesign } from '../axis/axis-design.js';
import { designAxis, isAxisSheet } from '../axis/design.js';
import { type Design, type DesignOptions, design } from '../pipeline/design.js';
import { peekName } from '../pipeline/peek-name.js';
import { fault } from '../units/faults.js';
import { asError } from './as-error.js';
import { type InputPlace, readInput } from './read-input.js';
import { withProfiles } from './with-profiles.js';

/** A sheet that was read and worked out, or why it cannot be used. */
export type OpenedSheet =
  | ({ readonly file: string; readonly design: Design } & Read)
  | ({ readonly file: string; readonly axis: AxisDesign } & Read)
  /** `name` where the sheet says one in spite of its mistakes */
  | { readonly file: string; readonly error: Error; readonly name?: string };

/** A sheet's text, and what it is worked out with: profiles that lie beside it are counted among the presets. */
interface Read {
  readonly text: string;
  readonly known: DesignOptions;
}

/**
 * Reads sheets and works them out, each on its own. Two sheets of one name (case ignored) would share a folder, so
 * neither can be used.
 */
export async function openSheets(
  files: readonly string[],
  place: InputPlace,
  options: DesignOptions = {},
): Promise<OpenedSheet[]> {
  const opened: OpenedSheet[] = [];
  for (const file of files) opened.push(await openSheet(file, place, options));
  return opened.map((sheet) => refuseShared(sheet, opened));
}

async function openSheet(file: string, place: InputPlace, options: DesignOptions): Promise<OpenedSheet> {
  let text: string | undefined;
  try {
    text = await readInput(file, place);
    const known = await withProfiles(text, file, place, options);
    const read = { file, text, known };
    return isAxisSheet(text) ? { ...read, axis: designAxis(text, known) } : { ...read, design: design(text, known) };
  } catch (error) {
    const name = text === undefined ? undefined : peekName(text);
    return { file, error: asError(error), ...(name === undefined ? {} : { name }) };
  }
}

/** The name of what a sheet is for, as far as it says one. */
export function nameOf(sheet: OpenedSheet): string | undefined {
  if ('design' in sheet) return sheet.design.name;
  return 'axis' in sheet ? sheet.axis.name : sheet.name;
}

function refuseShared(sheet: OpenedSheet, all: readonly OpenedSheet[]): OpenedSheet {
  const name = nameOf(sheet);
  if ('error' in sheet || name === undefined) return sheet;
  const other = all.find((one) => one !== sheet && !('error' in one) && sameName(nameOf(one), name));
  if (!other) return sheet;
  const error = fault('name', name, `must differ from that of ${other.file}, letters' case aside`);
  return { file: sheet.file, error, name };
}

function sameName(a: string | undefined, b: string): boolean {
  return a?.toLowerCase() === b.toLowerCase();
}
