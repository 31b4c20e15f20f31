import type { Screw } from '../../sheet/resolve-screw.js';
import { nutLimits } from '../../standards/tolerances/thread-limits.js';
import { InputError } from '../../units/faults.js';

/** Shanks that tell the bore of a nut by the standard: one that must go in, one that must not [mm]. */
export interface DrillShanks {
  readonly goes: number;
  readonly mustNot: number;
}

/** Drills come in tenths: the largest below the least bore, and the smallest above the most. None where no standard has limits. */
export function drillShanks({ designation }: Pick<Screw, 'designation'>): DrillShanks | undefined {
  if (designation === undefined) return undefined;
  try {
    const [least, most] = nutLimits({ designation }).minor;
    return { goes: Math.floor(10 * least + 1e-6) / 10, mustNot: Math.ceil(10 * most - 1e-6) / 10 };
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
