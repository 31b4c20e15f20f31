import { designAny } from '../../axis/any.js';
import type { KnownKind } from '../../pipeline/known-kind.js';
import { InputError } from '../../units/faults.js';
import type { Maker } from './makers.js';

/** In the place of a maker where all parts must be at hand: tells wrong sheets from parts that no share holds. */
export function noMaker(kinds?: readonly KnownKind[]): Maker {
  return {
    width: 1,
    make: async ({ sheet, presets }) => {
      try {
        designAny(sheet, { ...(kinds ? { kinds } : {}), ...(presets ? { presets } : {}) });
      } catch (error) {
        if (error instanceof InputError) return { state: 'wrong', faults: error.faults };
        throw error;
      }
      return {
        state: 'absent',
        reason: 'no share holds it whole, made by this program with these --formats, --zip and --accept',
      };
    },
    close: async () => undefined,
  };
}
