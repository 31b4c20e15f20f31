import { map, orShort, quantity, word } from '../fields.js';

/** What stands in the holes of a floating nut in place of a tight screw. */
const SPACERS = ['sleeve', 'shoulder', 'bare'] as const;
export type Spacer = (typeof SPACERS)[number];

/** How a nut floats: sideways, along, and on what. A bare length is the float sideways. */
export const floatSection = orShort(
  map({
    sideways: quantity('length', { least: 0.05, most: 3 }, 'sideways, each way').optional(),
    along: quantity(
      'length',
      { least: 0.01, most: 1 },
      'play along the axis: how much longer the sleeves are than what slides between head and seat',
    ).optional(),
    spacer: word(
      SPACERS,
      'what keeps a tight screw off the flange: a sleeve around it, a shoulder screw, or nothing: then it is not tightened',
    ).optional(),
    sleeve: quantity('length', { above: 0, most: 40 }, 'outside diameter of the sleeves').optional(),
  }),
  (short) => ({ sideways: short }),
  'quantity',
);
