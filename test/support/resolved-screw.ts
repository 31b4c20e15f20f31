import { Assumptions } from '../../src/sheet/assumptions.js';
import { resolveScrew } from '../../src/sheet/resolve-screw.js';
import { screwSection } from '../../src/sheet/sections/screw.js';

/** A screw's section as it is resolved, by calipers of ± 0.02 mm, and what was assumed. */
export function resolved(sheet: object) {
  const assumptions = new Assumptions();
  return { screw: resolveScrew(screwSection.parse(sheet), 0.02, assumptions), assumptions };
}
