import * as z from 'zod';
import { EVEN_IF_WRONG, map, orShort, quantity, reading, whole, word } from '../fields.js';

const counted = {
  count: whole(1, 500, 'pitches spanned, from one edge to the same edge'),
  length: reading('length', { above: 0, most: 2000 }),
};
const travelled = {
  turns: whole(1, 500, 'whole turns of the screw'),
  length: reading('length', { above: 0, most: 5000 }),
};

const screwFields = map({
  designation: z
    .string('must be text such as Tr8x2')
    .max(40)
    .optional()
    .describe('Tr8x2, Tr8x8(P2), Tr10x2-LH, Acme 3/8-10, M8, or the name of a screw that ships'),
  form: word(['trapezoidal', 'acme', 'metric-v']).optional(),
  flank_angle: quantity('angle', { least: 2, most: 45 }, 'one flank, against the normal to the axis').optional(),
  // from a worn M3 to an oversize reading of 60 mm
  major: reading('length', { least: 2.5, most: 60.5 }, 'over the crests').optional(),
  pitch: reading('length', { least: 0.25, most: 16 }).optional(),
  crests: map(counted).optional(),
  starts: whole(1, 12).optional(),
  lead: reading('length', { above: 0, most: 200 }, 'travel per turn').optional(),
  travel: map(travelled).optional(),
  hand: word(['right', 'left']).optional(),
  minor: reading('length', { above: 0, most: 60 }, 'over the roots').optional(),
  pitch_diameter: reading('length', { above: 0, most: 60 }).optional(),
  wires: map({
    wire: quantity('length', { above: 0, most: 20 }),
    over: reading('length', { above: 0, most: 100 }),
  }).optional(),
  crest_flat: reading('length', { above: 0, most: 10 }, 'width of the flat on a crest').optional(),
}).superRefine((screw, context) => {
  const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
  const named = screw.designation !== undefined;
  if (!named && screw.major === undefined)
    refuse('major', 'is missing; measure over the crests, or give a designation');
  if (!named && screw.pitch === undefined && screw.crests === undefined)
    refuse('pitch', 'is missing; give pitch, crests or a designation');
  if (!named && screw.form === undefined && screw.flank_angle === undefined) {
    refuse('form', 'is missing; must be one of trapezoidal, acme, metric-v, or give flank_angle');
  }
  if (screw.pitch_diameter && screw.wires) refuse('wires', 'give pitch_diameter or wires, not both');
  if (screw.pitch && screw.crests) refuse('crests', 'give pitch or crests, not both');
  if (screw.lead && screw.travel) refuse('travel', 'give lead or travel, not both');
}, EVEN_IF_WRONG);

/** A screw: a designation, or what was measured on it, or both. */
export const screwSection = orShort(screwFields, (short) => ({ designation: String(short) }), 'string');
export type ScrewSheet = z.output<typeof screwSection>;
