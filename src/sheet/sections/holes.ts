import { z } from 'zod';
import { FASTENER_SIZES } from '../../standards/fasteners/sizes.js';
import { map, quantity, reading, whole, word } from '../fields.js';

const across = quantity('length', { above: 0, most: 300 });
const patternFields = {
  count: whole(1, 24).optional(),
  circle: reading('length', { above: 0, most: 300 }, 'diameter of the hole circle').optional(),
  start: quantity('angle', { least: -360, most: 360 }, 'turn of hole 1 from +X').optional(),
  rectangle: z.tuple([across, across], 'must be two distances: [20 mm, 14 mm]').optional(),
  screw: word(FASTENER_SIZES).optional(),
  fit: word(['fine', 'medium', 'coarse'], 'clearance hole series').optional(),
  diameter: reading('length', { above: 0, most: 40 }, 'finished hole').optional(),
};

function checkPattern(
  holes: { count?: unknown; circle?: unknown; rectangle?: unknown; screw?: unknown; diameter?: unknown },
  context: z.core.$RefinementCtx,
) {
  const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
  if ((holes.circle === undefined) === (holes.rectangle === undefined))
    refuse('circle', 'give either circle or rectangle');
  if (holes.screw === undefined && holes.diameter === undefined) refuse('screw', 'give screw or diameter');
  if (holes.rectangle !== undefined && holes.count !== undefined && holes.count !== 4)
    refuse('count', 'a rectangle has 4 holes');
  if (holes.circle !== undefined && holes.count === undefined)
    refuse('count', 'is missing; must be a whole number from 1 to 24');
}

/** The holes of a printed part. */
export const holesSection = map({
  ...patternFields,
  joint: word(['through', 'counterbore', 'hexagon', 'insert'], 'what the hole is made for').optional(),
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
});

/** The holes of the thing that a part is mounted to. */
export const patternSection = map(patternFields).superRefine(checkPattern);

export type HolesSheet = z.output<typeof holesSection>;
export type PatternSheet = z.output<typeof patternSection>;
