import * as z from 'zod';
import { EVEN_IF_WRONG, map, quantity, word } from '../sheet/fields.js';
import { printerFigures } from '../sheet/sections/printer.js';
import { PROFILE_NAME, SLICER_ANSWERS, STATES } from '../sheet/sections/profile.js';
import { POCKET_KINDS, READ_KINDS } from './feature.js';
import { FELT } from './ladder.js';

const size = quantity('length', { above: 0, most: 400 });
const clearance = quantity('length', { least: -2, most: 5 });
const text = z.string('must be text').min(1, 'must not be empty').max(200);

/** A line that was left blank. */
const orBlank = <T extends z.ZodType>(schema: T) => z.preprocess((input) => input ?? undefined, schema.optional());

const read = z
  .preprocess(
    (input) => (input === null || input === undefined ? [] : Array.isArray(input) ? input : [input]),
    z.array(size).max(20, 'must be at most 20 readings'),
  )
  .describe('readings of the calipers; [] where none was taken');

const readRow = map({
  hole: size.optional(),
  post: size.optional(),
  over_x: size.optional(),
  between_x: size.optional(),
  over_y: size.optional(),
  between_y: size.optional(),
  height: size.optional(),
  foot_x: size.optional(),
  foot_y: size.optional(),
  read: read.optional(),
}).superRefine((row, context) => {
  if (READ_KINDS.filter((kind) => row[kind] !== undefined).length !== 1)
    context.addIssue({ code: 'custom', message: `must say what is read, by one of ${READ_KINDS.join(', ')}` });
}, EVEN_IF_WRONG);

const triedRow = map({
  thread: map({ diametral: clearance, axial: clearance }).optional(),
  hexagon: size.optional(),
  insert: size.optional(),
  shaft: size.optional(),
  d_shaft: size.optional(),
  for: size.optional().describe('size of what goes into the pocket'),
  felt: orBlank(word(FELT, 'how it goes by hand')),
}).superRefine((row, context) => {
  const pockets = POCKET_KINDS.filter((kind) => row[kind] !== undefined).length;
  if (pockets + (row.thread === undefined ? 0 : 1) !== 1)
    context.addIssue({
      code: 'custom',
      message: `must say what was tried, by one of thread, ${POCKET_KINDS.join(', ')}`,
    });
  if (pockets === 1 && row.for === undefined)
    context.addIssue({ code: 'custom', path: ['for'], message: 'is missing; the size of what goes into the pocket' });
}, EVEN_IF_WRONG);

const rows = <T extends z.ZodType>(row: T) => z.record(z.string().max(40), row, { error: 'must be a map of marks' });

/** What was read off a printed coupon, and what the coupon was. */
export const resultsSchema = map({
  results: z.literal('coupon', 'must be coupon'),
  coupon: text.describe('name of the coupon that was printed'),
  profile: text
    .regex(PROFILE_NAME, 'must be small letters, digits, points and hyphens')
    .optional()
    .describe('name of the profile to write'),
  material: text.describe('the material preset it was printed from'),
  printer: map({
    nozzle: printerFigures.nozzle,
    layer: printerFigures.layer,
    line_width: printerFigures.line_width,
  }),
  applied: map({
    plane: quantity('ratio', { least: -0.01, most: 0.03 }),
    axial: quantity('ratio', { least: -0.01, most: 0.03 }),
    hole_offset: map({
      at_zero: quantity('length', { least: -1, most: 1 }),
      per_mm: z.number('must be a number').min(-0.05).max(0.05),
    }),
  }).describe('what the drawn threads and pockets are compensated by; all other features are drawn as they are'),
  screw: map({
    pitch_diameter: size,
    pitch: size,
    lead: size,
    flank_angle: quantity('angle', { least: 2, most: 45 }),
  }).optional(),
  state: word(STATES, 'of the coupon when it was read').optional(),
  slicer_compensates: word(SLICER_ANSWERS, 'what the slicer corrects by itself'),
  calipers: quantity('length', { above: 0, most: 0.5 }, 'half-width of the uncertainty of a reading').optional(),
  readings: rows(readRow).optional(),
  tried: rows(triedRow).optional(),
}).superRefine((results, context) => {
  const threads = Object.entries(results.tried ?? {}).some(([, row]) => row.thread !== undefined);
  if (threads && results.screw === undefined)
    context.addIssue({ code: 'custom', path: ['screw'], message: 'is missing; threads were tried on it' });
}, EVEN_IF_WRONG);

/** One printed coupon with its readings. */
export type Results = z.output<typeof resultsSchema>;

/** A reading's own kind and size in the file. */
export function readOf(row: NonNullable<Results['readings']>[string]) {
  const kind = READ_KINDS.find((one) => row[one] !== undefined)!;
  return { kind, modelled: row[kind]!, read: row.read ?? [] };
}
