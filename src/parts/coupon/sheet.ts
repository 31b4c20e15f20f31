import * as z from 'zod';
import { EVEN_IF_WRONG, map, orShort, quantity, whole, word } from '../../sheet/fields.js';
import { calipersField, partName } from '../../sheet/sections/common.js';
import { limitsSection } from '../../sheet/sections/limits.js';
import { materialSection } from '../../sheet/sections/material.js';
import { printerSection } from '../../sheet/sections/printer.js';
import { screwSection } from '../../sheet/sections/screw.js';
import { heatSetBore } from '../../standards/fasteners/plastic-holes.js';
import { FASTENER_SIZES } from '../../standards/fasteners/sizes.js';
import { InputError } from '../../units/faults.js';

/** What a coupon is printed for; each is a body of its own. */
export const PURPOSES = ['scale', 'bores', 'thread', 'pockets'] as const;
export type Purpose = (typeof PURPOSES)[number];

const clearance = (about: string) => quantity('length', { least: -0.5, most: 3 }, about).optional();
const step = (about: string) => quantity('length', { least: 0.01, most: 0.5 }, about).optional();

/** Sheet of a coupon. */
export const couponSchema = map({
  part: z.literal('coupon', 'must be coupon'),
  name: partName,
  purposes: orShort(
    map({ list: z.array(word(PURPOSES), 'must be a list').min(1, 'must name at least one purpose') }),
    (short) => ({ list: [short] }),
    'string',
  )
    .or(
      z
        .array(word(PURPOSES), 'must be a list')
        .min(1, 'must name at least one purpose')
        .transform((list) => ({ list })),
    )
    .optional()
    .describe('what is printed'),
  scale: map({
    span: quantity('length', { least: 20, most: 200 }, 'between the outermost blocks, middle to middle').optional(),
    height: quantity('length', { least: 0, most: 100 }, 'of the highest step; 0 leaves the steps out').optional(),
  }).optional(),
  bores: z
    .array(quantity('length', { least: 2, most: 30 }), 'must be a list of diameters')
    .min(1, 'must name at least one diameter')
    .max(8, 'must name at most 8 diameters')
    .optional()
    .describe('diameters of the bores and posts'),
  screw: screwSection.optional(),
  thread: map({
    steps: whole(3, 7, 'short nuts').optional(),
    diametral: clearance('of the middle nut'),
    axial: clearance('of the middle nut, over both flanks'),
    step: step('from nut to nut, on the diameter'),
    axial_step: quantity('length', { least: 0, most: 0.5 }, 'from nut to nut, along the axis').optional(),
  }).optional(),
  pockets: map({
    screw: word(FASTENER_SIZES, 'whose nut and insert are tried').optional(),
    shaft: quantity('length', { least: 2, most: 20 }, 'diameter of the shaft that is tried').optional(),
    flat: quantity('length', { above: 0, most: 20 }, 'of a D shaft, from the flat to the far side').optional(),
    steps: whole(3, 7, 'of each kind').optional(),
    step: step('from pocket to pocket'),
  }).optional(),
  calipers: calipersField,
  material: materialSection.optional(),
  printer: printerSection.optional(),
  limits: limitsSection.optional(),
}).superRefine((sheet, context) => {
  const refuse = (path: string[], message: string) => context.addIssue({ code: 'custom', path, message });
  const wants = (purpose: Purpose) => sheet.purposes?.list?.includes(purpose) === true;
  if (wants('thread') && sheet.screw === undefined) refuse(['screw'], 'is missing; the short nuts are made for it');
  const { screw, shaft, flat } = sheet.pockets ?? {};
  if (screw !== undefined && !hasInsert(screw)) refuse(['pockets', 'screw'], 'has no usual insert; choose M2 to M8');
  if (flat !== undefined && flat >= (shaft ?? 5))
    refuse(['pockets', 'flat'], 'must be below the diameter of the shaft');
}, EVEN_IF_WRONG);
export type CouponSheet = z.output<typeof couponSchema>;

function hasInsert(screw: (typeof FASTENER_SIZES)[number]): boolean {
  try {
    return heatSetBore(screw).bore > 0;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}
