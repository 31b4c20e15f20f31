import { newResults } from '../pipeline/new-results.js';
import { newTrial } from '../pipeline/new-trial.js';
import { startSheet } from '../pipeline/start-sheets.js';
import { fault } from '../units/faults.js';
import { type InputPlace, readInput } from './read-input.js';
import { withProfiles } from './with-profiles.js';

/**
 * What `new` prints: a sheet to start from, or the results file of a coupon.
 * @throws InputError there is no such kind; a sheet where none belongs, or that is not a coupon's
 */
export async function newText(kind: string, sheet: string | undefined, place: InputPlace): Promise<string> {
  if (sheet === undefined) return startSheet(kind);
  if (kind !== 'results' && kind !== 'trial')
    throw fault('', sheet, 'one argument too many; only new results and new trial take a sheet');
  const text = await readInput(sheet, place);
  const options = await withProfiles(text, sheet, place, {});
  return kind === 'trial' ? newTrial(text, options) : newResults(text, options);
}
