import * as z from 'zod';
import { map, orShort, quantity, whole, word } from '../../sheet/fields.js';
import { FASTENER_SIZES } from '../../standards/fasteners/sizes.js';

/** How a hub holds its shaft. */
export const GRIPS = ['clamp', 'set-screw', 'both'] as const;

/** Fields of a hub's grip, shared by everything that holds a shaft. */
export const gripFields = {
  grip: word(GRIPS).optional(),
  clamp: orShort(
    map({
      screw: word(FASTENER_SIZES).optional(),
      count: whole(1, 2, 'clamp screws, one behind the other').optional(),
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
  friction: z.number('must be a number').min(0.02).max(1).optional().describe('between shaft and bore'),
  tightening: quantity('torque', { above: 0, most: 40_000 }, 'of each clamp screw').optional(),
};
