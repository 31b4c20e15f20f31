import { map, orShort, quantity, word } from '../../sheet/fields.js';

/** Clearances of a thread on its screw: a class, or figures of one's own. */
export const fitSection = orShort(
  map({
    class: word(['close', 'running', 'loose']).optional(),
    diametral: quantity('length', { least: -0.5, most: 3 }, 'clearance on the diameter').optional(),
    axial: quantity('length', { least: -0.5, most: 3 }, 'clearance along the axis, over both flanks').optional(),
  }),
  (short) => ({ class: short }),
  'string',
);
