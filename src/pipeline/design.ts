import { SHIPPED } from '../presets/shipped.js';
import { triedRemedies } from './advice/tried-remedies.js';
import { kindOfDesign } from './find-kind.js';
import { KINDS } from './kinds.js';
import { plainSheet } from './read-sheet.js';
import { type Design, type DesignOptions, workOut } from './work-out.js';

export type { Design, DesignOptions } from './work-out.js';

/**
 * Works out all sizes of a part from its sheet. Where something misses its limit and the kind knows ways to cure it, each is
 * tried on the sheet, and those that lead there go with the design.
 *
 * @param sheet a sheet's text (YAML), or the same as a plain object
 * @param options presets and part kinds, where not those that ship
 * @returns the design, plain data
 * @throws InputError every mistake of the sheet at once, each with its line and column where the sheet is a text
 */
export function design(sheet: string | object, { presets = SHIPPED, kinds = KINDS }: DesignOptions = {}): Design {
  const made = workOut(sheet, { presets, kinds });
  const kind = kindOfDesign(kinds, made);
  // one object: what checks have worked out of it goes with it
  return Object.assign(made, triedRemedies(made, kind, plainSheet(sheet), { presets, kinds }));
}
