import { ofAnAxis, ofSinglePart, requireAcceptableOfAny } from '../axis/accept-call.js';
import { adviseAxis } from '../axis/advise.js';
import { checkAxis } from '../axis/check.js';
import type { Acceptance } from '../judge/accept.js';
import { advise } from '../pipeline/advise.js';
import { check, checkMated } from '../pipeline/check.js';
import type { DesignOptions } from '../pipeline/design.js';
import { createKernel, type Kernel } from '../solid/kernel.js';
import { asError } from './as-error.js';
import type { SheetResult } from './make-sheets.js';
import { type OpenedSheet, openSheets } from './open-sheets.js';
import type { InputPlace } from './read-input.js';

/** What sheets are judged with. */
export interface CheckSheetsOptions extends DesignOptions {
  readonly accept?: readonly Acceptance[];
  /** whether cures are worked out for what is open */
  readonly advise?: boolean;
  /** whether the screw is held in the part as printed, as solids */
  readonly mate?: boolean;
}

/**
 * Judges each sheet on its own; nothing is written.
 * @throws InputError a check that cannot be accepted, before any sheet is read
 */
export async function checkSheets(
  files: readonly string[],
  place: InputPlace,
  options: CheckSheetsOptions,
): Promise<SheetResult[]> {
  requireAcceptableOfAny(options.accept ?? [], options.kinds);
  const sheets = await openSheets(files, place, options);
  const kernel = options.mate === true ? await createKernel() : undefined;
  const alone = sheets.every((sheet) => !('design' in sheet));
  return sheets.map((sheet) => judged(sheet, options, { kernel, alone }));
}

function judged(
  sheet: OpenedSheet,
  { accept = [], ...rest }: CheckSheetsOptions,
  { kernel, alone }: { readonly kernel: Kernel | undefined; readonly alone: boolean },
): SheetResult {
  const { file } = sheet;
  if ('error' in sheet) return { file, error: sheet.error };
  try {
    if ('axis' in sheet) {
      const mate = kernel ? { mate: kernel } : {};
      const report = checkAxis(sheet.axis, { accept: ofAnAxis(accept, alone), ...mate });
      const advice = rest.advise === true ? { advice: adviseAxis(sheet.text, sheet.known) } : {};
      return { file, report: { ...report, ...advice }, written: [] };
    }
    const options = { ...rest, accept: ofSinglePart(accept) };
    const report = kernel ? checkMated(sheet.design, kernel, options) : check(sheet.design, options);
    const advice = options.advise === true ? { advice: advise(sheet.text, sheet.known) } : {};
    return { file, report: { ...report, ...advice }, written: [] };
  } catch (error) {
    return { file, error: asError(error) };
  }
}
