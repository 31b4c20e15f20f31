import * as z from 'zod';
import { EVEN_IF_WRONG, map, quantity, reading, word } from '../sheet/fields.js';
import { printerFigures } from '../sheet/sections/printer.js';
import { PROFILE_NAME } from '../sheet/sections/profile.js';

/** How a finished nut goes on its screw. */
export const GOES = ['by-hand', 'tight', 'jams', 'no'] as const;

/** Where it is tight. */
export const TIGHT = [
  'nowhere',
  'even',
  'bed-end',
  'once-a-turn-with-nut',
  'once-a-turn-with-screw',
  'twice-a-turn',
  'one-place',
] as const;

/** Whether it has changed since it was printed. */
export const SINCE = ['new', 'tighter-after-days', 'looser-after-weeks', 'tighter-when-warm'] as const;

const text = z.string('must be text').min(1, 'must not be empty').max(200);
const blank = <T extends z.ZodType>(schema: T) => z.preprocess((input) => input ?? undefined, schema.optional());
const size = quantity('length', { above: 0, most: 400 });
const read = (about: string) => blank(reading('length', { least: 0, most: 400 }, about));

/** What a person sees on a finished nut, and how the nut was made. */
export const trialSchema = map({
  results: z.literal('trial', 'must be trial'),
  nut: text.describe('name of the nut that was printed'),
  profile: text.regex(PROFILE_NAME, 'must be small letters, digits, points and hyphens').optional(),
  material: text,
  printer: map({ nozzle: printerFigures.nozzle, layer: printerFigures.layer }),
  applied: map({
    plane: quantity('ratio', { least: -0.03, most: 0.05 }),
    axial: quantity('ratio', { least: -0.03, most: 0.05 }),
    hole_offset: quantity('length', { least: -1, most: 1 }, 'at the bore'),
  }).describe('what the file was compensated by'),
  doubt: map({
    axial: quantity('ratio', { least: 0, most: 0.05 }),
  }).describe('half-width of the axial shrink that was taken'),
  pitch: size,
  flank_angle: quantity('angle', { least: 2, most: 45 }),
  fit: map({
    diametral: quantity('length', { least: -1, most: 3 }),
    axial: quantity('length', { least: -1, most: 3 }),
  }),
  wanted: map({
    length: size,
    bore: size,
    body: size,
    play: quantity('length', { least: -1, most: 3 }, 'along the axis, run in, one tooth'),
  }).describe('sizes and play that the nut should have'),
  edges: quantity('length', { least: 0, most: 2 }, 'play that the edges of the layers take from a fresh print'),
  run_in: blank(word(['yes', 'no'])),
  goes: blank(word(GOES, 'on the screw, by hand')),
  jams_after: blank(z.number('must be a number of turns').min(0).max(1000)),
  play: read('free play along the axis, the nut wholly on'),
  tight: blank(word(TIGHT)),
  since: blank(word(SINCE)),
  length: read('over all'),
  body: read('outside, away from the bed'),
  body_at_bed: read('outside, at the bed'),
  bore: read('by calipers or a drill shank'),
  screw_runout: read('dial at its middle, turned by hand'),
}).superRefine((trial, context) => {
  if (trial.goes === undefined && trial.play === undefined && trial.bore === undefined && trial.length === undefined)
    context.addIssue({ code: 'custom', message: 'needs how the nut goes, or a reading: goes, play, length or bore' });
  if (trial.goes === 'jams' && trial.jams_after === undefined)
    context.addIssue({ code: 'custom', path: ['jams_after'], message: 'is missing; after how many turns' });
}, EVEN_IF_WRONG);

/** One finished nut as a person found it. */
export type Trial = z.output<typeof trialSchema>;
