import * as z from 'zod';
import { map, quantity, reading, word } from '../../../sheet/fields.js';
import { FASTENER_SIZES } from '../../../standards/fasteners/sizes.js';
import { boughtNutSection } from '../../common/bought-nut.js';

const length = (about = '') => quantity('length', { above: 0, most: 200 }, about);

const springSection = map({
  inside: reading('length', { above: 0, most: 100 }, 'inside diameter'),
  outside: reading('length', { above: 0, most: 100 }, 'outside diameter'),
  free: reading('length', { above: 0, most: 200 }, 'length without load'),
  solid: length('length with its turns on each other'),
  rate: z.number('must be a number in N/mm').positive('must be above 0').max(1000).describe('N per mm'),
  working: length('length in the nut; else worked out from the load').optional(),
});

/** How a nut may differ from a plain one. */
export const variantFields = map({
  kind: word(['split', 'clamped', 'anti-backlash', 'holder', 'twin'], 'how the nut differs from a plain one'),
  screw: word(FASTENER_SIZES, 'that closes halves or slit').optional(),
  closed: word(['screws', 'ring'], 'what closes the halves').optional(),
  pins: map({ diameter: length(), length: length() }).optional().describe('bought pins that place the halves'),
  nut: boughtNutSection.optional().describe('the bought nut that a holder takes'),
  pocket: word(['face', 'end'], 'where the pocket opens: on the flange face, or on the body end').optional(),
  spring: springSection.optional(),
  follower: length('length of the second nut').optional(),
  apart: length('from the middle of one thread of a twin nut to that of the other').optional(),
  shift: quantity(
    'length',
    { least: 0, most: 1 },
    'by which the upper thread of a twin nut is set off its helix, out of the play',
  ).optional(),
  lever: quantity('length', { least: 0, most: 2000 }, 'beside the screw, where the load on a twin nut acts').optional(),
});

/** A nut in several pieces, with a slit, or around a bought nut. */
export const variantSection = variantFields.superRefine((family, context) => {
  const owners = {
    screw: ['split', 'clamped'],
    closed: ['split'],
    pins: ['split'],
    nut: ['holder'],
    pocket: ['holder'],
    spring: ['anti-backlash'],
    follower: ['anti-backlash'],
    apart: ['twin'],
    shift: ['twin'],
    lever: ['twin'],
  } as const;
  const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
  for (const [key, kinds] of Object.entries(owners) as [keyof typeof owners, readonly string[]][]) {
    if (family[key] !== undefined && !kinds.includes(family.kind))
      refuse(key, `does not belong to a ${family.kind} nut`);
  }
  if (family.kind === 'holder' && family.nut === undefined) refuse('nut', 'is missing; measure the bought nut');
  if (family.kind === 'anti-backlash' && family.spring === undefined)
    refuse('spring', 'is missing; measure the bought spring');
  if (family.kind === 'twin' && family.apart === undefined) refuse('apart', 'is missing; must be above 0');
});
export type VariantSheet = z.output<typeof variantSection>;
