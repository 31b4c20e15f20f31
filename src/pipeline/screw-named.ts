import { type DriveScrew, driveScrewOf } from '../drive/screw.js';
import { SHIPPED } from '../presets/shipped.js';
import { nearest } from '../sheet/nearest.js';
import { parseDesignation } from '../standards/threads/designation.js';
import { ALL_SERIES } from '../standards/threads/series.js';
import { meantWords } from '../standards/threads/trade-words.js';
import { InputError } from '../units/faults.js';
import { screwDesignation } from './named-fields.js';

/**
 * The screw of a designation, or of the name of a preset that ships.
 * @throws InputError at `path`: what is allowed, and the nearest that is known
 */
export function screwNamed(designation: string, path: string): DriveScrew {
  try {
    return driveScrewOf(parseDesignation(screwDesignation(designation, SHIPPED)));
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
