import { changed } from './nut-sheets.js';

type Tree = { readonly [key: string]: unknown };

/** Two shafts, a torque and a mounting, nothing else. */
export const PLAIN_COUPLING = {
  part: 'coupling',
  name: 'plain',
  motor: { shaft: { diameter: 5, flat: 4.5 }, torque: 0.3 },
  screw: 'Tr8x2',
  mounting: 'motor-below',
} as const;

/** The plain coupling with changes, map by map; `undefined` takes a field out. */
export function couplingSheet(changes: Tree = {}): Record<string, unknown> {
  return changed(PLAIN_COUPLING, changes);
}
