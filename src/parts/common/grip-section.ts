import * as z from 'zod';
import { map, orShort, quantity, whole, word } from '../../sheet/fields.js';
import { FASTENER_SIZES } from '../../standards/fasteners/sizes.js';

/** How a hub holds its shaft. */
const GRIPS = ['clamp', 'set-screw', 'both'] as const;

/** Whether the workshop card asks for a second tightening, so that it counts. */
export const RETIGHTEN = word(
  ['yes', 'no'],
  'the workshop card asks to tighten clamp screws again: cold, after the first hot day, to the same torque',
).optional();

/** Whether torque changes its direction, as that of a screw does. */
export const REVERSING = word(['yes', 'no'], 'the torque changes its direction').optional();

/** Fields of a hub's grip, shared by everything that holds a shaft. */
export const gripFields = {
  grip: word(GRIPS).optional(),
  clamp: orShort(
    map({
      screw: word(FASTENER_SIZES).optional(),
      count: whole(1, 2, 'clamp screws, one behind the other').optional(),
      washers: word(['yes', 'no'], 'under head and nut, in wider pockets').optional(),
    }),
    (short) => ({ screw: short }),
    'string',
  ).optional(),
  set_screw: orShort(
    map({
      screw: word(FASTENER_SIZES).optional(),
      joint: word(['nut', 'insert'], 'what the set screw turns in').optional(),
    }),
    (short) => ({ screw: short }),
    'string',
  ).optional(),
  bore_clearance: quantity('length', { least: -0.1, most: 0.5 }, 'diametral, before the clamp closes').optional(),
  degreased: word(['yes', 'no'], 'the shaft is washed free of grease where it is held').optional(),
  friction: z.number('must be a number').min(0.02).max(1).optional().describe('between shaft and bore'),
  tightening: quantity('torque', { above: 0, most: 40_000 }, 'of each clamp screw').optional(),
};
