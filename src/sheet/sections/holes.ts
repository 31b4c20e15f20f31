import * as z from 'zod';
import { FASTENER_SIZES } from '../../standards/fasteners/sizes.js';
import { EVEN_IF_WRONG, map, quantity, reading, whole, word } from '../fields.js';

const across = quantity('length', { above: 0, most: 300 });
const place = quantity('length', { least: -300, most: 300 });
const patternFields = {
  count: whole(1, 24).optional(),
  circle: reading('length', { above: 0, most: 300 }, 'diameter of the hole circle').optional(),
  start: quantity('angle', { least: -360, most: 360 }, 'turn of hole 1 from +X').optional(),
  rectangle: z.tuple([across, across], 'must be two distances: [20 mm, 14 mm]').optional(),
  at: z
    .array(z.tuple([place, place], 'must be two distances from the axis: [8 mm, -3.2 mm]'), 'must be a list of places')
    .min(1, 'must name at least one hole')
    .max(24, 'must name at most 24 holes')
    .optional()
    .describe('free places of the holes, x and y from the axis'),
  screw: word(FASTENER_SIZES).optional(),
  fit: word(['fine', 'medium', 'coarse'], 'clearance hole series').optional(),
  diameter: reading('length', { above: 0, most: 40 }, 'finished hole').optional(),
};

function checkPattern(
  holes: { count?: unknown; circle?: unknown; rectangle?: unknown; at?: unknown; screw?: unknown; diameter?: unknown },
  context: z.core.$RefinementCtx,
) {
  const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
  const ways = [holes.circle, holes.rectangle, holes.at].filter((way) => way !== undefined);
  if (ways.length !== 1) refuse('circle', 'give one of circle, rectangle and at');
  if (holes.screw === undefined && holes.diameter === undefined) refuse('screw', 'give screw or diameter');
  if (holes.rectangle !== undefined && holes.count !== undefined && holes.count !== 4)
    refuse('count', 'a rectangle has 4 holes');
  if (holes.at !== undefined && holes.count !== undefined) refuse('count', 'the places under at already say how many');
  if (holes.circle !== undefined && holes.count === undefined)
    refuse('count', 'is missing; must be a whole number from 1 to 24');
}

/** The holes of a printed part. */
export const holesSection = map({
  ...patternFields,
  joint: word(['through', 'counterbore', 'hexagon', 'insert', 'tapped'], 'what the hole is made for').optional(),
  head: word(['body', 'flange', 'none'], 'the side on which screw heads sit').optional(),
}).superRefine((holes, context) => {
  checkPattern(holes, context);
  if (holes.joint !== undefined && holes.joint !== 'through' && holes.screw === undefined) {
    context.addIssue({
      code: 'custom',
      path: ['screw'],
      message: `is missing; a ${holes.joint} joint needs a screw size`,
    });
  }
}, EVEN_IF_WRONG);

/** The holes of the thing that a part is mounted to. */
export const patternSection = map(patternFields).superRefine(checkPattern, EVEN_IF_WRONG);

export type HolesSheet = z.output<typeof holesSection>;
export type PatternSheet = z.output<typeof patternSection>;
