import { changed } from './nut-sheets.js';

type Tree = { readonly [key: string]: unknown };

/** Two shafts, a torque, a mounting, and hubs that keep their grip on a motor of 70 °C. */
export const PLAIN_COUPLING = {
  part: 'coupling',
  name: 'plain',
  motor: { shaft: { diameter: 5, flat: 4.5, length: 40 }, torque: 0.3, temperature: 70 },
  screw: { designation: 'Tr8x2', major: 7.95 },
  mounting: 'motor-below',
  material: 'pc',
  motor_hub: { clamp: { screw: 'M3', count: 2, washers: 'yes' }, degreased: 'yes' },
  screw_hub: { clamp: { screw: 'M3', count: 2, washers: 'yes' }, degreased: 'yes' },
  duty: { temperature: 25 },
} as const;

/** What makes an insert alone of the plain coupling: no shafts, and the jaws of two bought hubs. */
export const BOUGHT_HUBS = {
  motor: { shaft: undefined },
  screw: undefined,
  motor_hub: undefined,
  screw_hub: undefined,
  material: undefined,
  hubs: { outside_diameter: 25 },
  jaws: { count: 3, height: 8, width: 7, inner: 12 },
} as const;

/** The plain coupling with changes, map by map; `undefined` takes a field out. */
export function couplingSheet(changes: Tree = {}): Record<string, unknown> {
  return changed(PLAIN_COUPLING, changes);
}
