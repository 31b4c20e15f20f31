import type { Acceptance } from '../fit/accept.js';
import { check } from '../pipeline/check.js';
import type { DesignOptions } from '../pipeline/design.js';
import { requireAcceptable } from '../pipeline/require-acceptable.js';
import { asError } from './as-error.js';
import type { SheetResult } from './make-sheets.js';
import { type OpenedSheet, openSheets } from './open-sheets.js';
import type { InputPlace } from './read-input.js';

/** What sheets are judged with. */
export interface CheckSheetsOptions extends DesignOptions {
  readonly accept?: readonly Acceptance[];
}

/**
 * Judges each sheet on its own; nothing is built or written.
 * @throws InputError a check that cannot be accepted, before any sheet is read
 */
export async function checkSheets(
  files: readonly string[],
  place: InputPlace,
  options: CheckSheetsOptions,
): Promise<SheetResult[]> {
  requireAcceptable(options.accept ?? [], options.kinds);
  return (await openSheets(files, place, options)).map((sheet) => judged(sheet, options));
}

function judged(sheet: OpenedSheet, options: CheckSheetsOptions): SheetResult {
  const { file } = sheet;
  if (!('design' in sheet)) return { file, error: sheet.error };
  try {
    return { file, report: check(sheet.design, options), written: [] };
  } catch (error) {
    return { file, error: asError(error) };
  }
}
