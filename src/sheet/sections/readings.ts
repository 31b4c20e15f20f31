import * as z from 'zod';
import { map, quantity, reading, whole, word } from '../fields.js';

const across = (about: string) => reading('length', { above: 0, most: 1000 }, about);
const along = (about: string) => reading('length', { above: 0, most: 10000 }, about);

/** One reading or a list of them. */
function several(one: ReturnType<typeof reading>) {
  const listed = z.array(one, 'must be a reading or a list of readings').min(1, 'must hold a reading').max(50);
  return z.preprocess((input) => (input === undefined || Array.isArray(input) ? input : [input]), listed.optional());
}

/** What may be out of reach: a nut that is lost, an end that is hidden. */
const CANNOT = ['major', 'crests', 'starts', 'travel', 'minor', 'crest_flat', 'wires', 'crest'] as const;

/** What a person reads off a screw to have it named; all of it optional, but something. */
export const readingsSection = map({
  major: several(across('over the crests, one reading or several')),
  crests: map({
    count: whole(1, 1000, 'pitches spanned, from one edge to the same edge'),
    length: along('over all of them'),
  }).optional(),
  travel: map({
    turns: z.number('must be a number of turns').positive('must be above 0').max(1000, 'must be at most 1000'),
    length: along('how far the nut went'),
  }).optional(),
  starts: whole(1, 12, 'grooves that begin at the end of the screw').optional(),
  minor: across('over the root').optional(),
  nut_bore: z
    .preprocess(
      (input) => (typeof input === 'number' || typeof input === 'string' ? { goes: input, stops: input } : input),
      map({
        goes: across('the drill shank that goes into the nut'),
        stops: across('the next larger one, which does not'),
      }),
    )
    .optional(),
  crest_flat: across('width of a crest along the axis').optional(),
  wires: map({
    wire: quantity('length', { above: 0, most: 100 }, 'diameter of each of the three wires'),
    over: across('over all three'),
  }).optional(),
  crest: word(['flat', 'sharp', 'round'], 'what the crests look like').optional(),
  hand: word(['right', 'left']).optional(),
  cannot: z
    .array(word(CANNOT), 'must be a list of measurements')
    .max(CANNOT.length)
    .describe('what cannot be measured, so that it is not asked for')
    .optional(),
  uncertainty: quantity('length', { above: 0, most: 5 }, 'half-width of every reading without its own').optional(),
});
export type ReadingsSheet = z.output<typeof readingsSection>;
