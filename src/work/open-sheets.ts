import { type Design, type DesignOptions, design } from '../pipeline/design.js';
import { peekName } from '../pipeline/peek-name.js';
import { fault } from '../units/faults.js';
import { asError } from './as-error.js';
import { type InputPlace, readInput } from './read-input.js';
import { withProfiles } from './with-profiles.js';

/** A sheet that was read and worked out, or why it cannot be used. */
export type OpenedSheet =
  | { readonly file: string; readonly design: Design; readonly text: string }
  /** `name` where the sheet says one in spite of its mistakes */
  | { readonly file: string; readonly error: Error; readonly name?: string };

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
    return { file, design: design(text, await withProfiles(text, file, place, options)), text };
  } catch (error) {
    const name = text === undefined ? undefined : peekName(text);
    return { file, error: asError(error), ...(name === undefined ? {} : { name }) };
  }
}

function refuseShared(sheet: OpenedSheet, all: readonly OpenedSheet[]): OpenedSheet {
  if (!('design' in sheet)) return sheet;
  const { file } = sheet;
  const { name } = sheet.design;
  const other = all.find((one) => one !== sheet && 'design' in one && sameName(one.design.name, name));
  if (!other) return sheet;
  const error = fault('name', name, `must differ from that of ${other.file}, letters' case aside`);
  return { file, error, name };
}

function sameName(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}
