import { type Designation, parseDesignation } from '../../standards/threads/designation.js';
import { designationText } from '../../standards/threads/designation-text.js';
import { meantWords } from '../../standards/threads/trade-words.js';
import { InputError, shown } from '../../units/faults.js';
import { howMany } from '../../units/format.js';
import type { Assumptions } from '../assumptions.js';

/** What a sheet's designation says. @throws InputError it cannot be read; with what may be meant */
export function readDesignation(text: string): Designation {
  try {
    return parseDesignation(text);
  } catch (error) {
    if (error instanceof InputError) {
      throw new InputError(
        error.faults.map((fault) => ({
          ...fault,
          path: 'screw.designation',
          value: shown(text),
          allowed: `${fault.allowed}${meantWords(text)}`,
        })),
      );
    }
    throw error;
  }
}

/** A name that says one start stands for its profile where the sheet says more: the whole screw has another name. */
export function nameOf(named: Designation, starts: number, assumptions: Assumptions): string {
  if (starts === named.starts) return named.text;
  const text = designationText({ ...named, starts });
  assumptions.note('screw.designation', text, `${named.text} with ${howMany(starts, 'start')}, as the sheet says`);
  return text;
}
