import type { Screw } from '../../sheet/resolve-screw.js';
import { screwLimits } from '../../standards/tolerances/thread-limits.js';
import { InputError } from '../../units/faults.js';
import type { Shaft } from './bore.js';

/** Share of the pitch by which crests stay under their nominal, where no class tells. @source iso-2903 */
const UNDER = 0.1;

/** A screw that is held over its crests; one that nobody measured may be as thin as its class allows. */
export function crestShaft(screw: Screw, measured: boolean): Shaft {
  const shaft = { form: 'round', diameter: screw.major, crests: true } as const;
  return measured ? shaft : { ...shaft, thinnest: thinnestMajor(screw) };
}

function thinnestMajor({ designation, major, pitch }: Screw): number {
  const usual = major.least - UNDER * pitch.likely;
  if (designation === undefined) return usual;
  try {
    return screwLimits({ designation }).major[0];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return usual;
  }
}
