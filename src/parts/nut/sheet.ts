import * as z from 'zod';
import { map, orShort, quantity, reading, word } from '../../sheet/fields.js';
import { calipersField, partName } from '../../sheet/sections/common.js';
import { carriedDutySection } from '../../sheet/sections/duty.js';
import { effectsSection } from '../../sheet/sections/effects.js';
import { floatSection } from '../../sheet/sections/float.js';
import { holesSection, patternSection } from '../../sheet/sections/holes.js';
import { limitsSection } from '../../sheet/sections/limits.js';
import { materialSection } from '../../sheet/sections/material.js';
import { printerSection } from '../../sheet/sections/printer.js';
import { screwSection } from '../../sheet/sections/screw.js';
import { catchNutSection } from '../common/bought-nut.js';
import { fitSection } from '../common/fit-section.js';
import { variantSection } from './variants/sheet.js';

const size = quantity('length', { above: 0, most: 400 });
const widths = z.tuple([size, size], 'must be two sizes: [40 mm, 24 mm]');

const bodySection = map({
  shape: word(['round', 'square', 'hexagon']).optional(),
  diameter: size.optional().describe('of a round body'),
  across_flats: size.optional().describe('of a square or hexagonal body'),
  width: size.optional().describe('the same as across_flats'),
  length: quantity('length', { above: 0, most: 300 }, 'over all, flange and stub included'),
  flats: size.optional().describe('across two flats, one on either side of the X axis'),
}).superRefine((body, context) => {
  const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
  const round = (body.shape ?? 'round') === 'round';
  const across = body.across_flats ?? body.width;
  if (round && body.diameter === undefined) refuse('diameter', 'is missing; a round body needs its diameter');
  if (round && across !== undefined)
    refuse(body.width === undefined ? 'across_flats' : 'width', 'a round body has a diameter instead');
  if (!round && across === undefined)
    refuse('across_flats', `is missing; a ${body.shape} body needs its size across flats`);
  if (!round && body.diameter !== undefined) refuse('diameter', `a ${body.shape} body has across_flats instead`);
  if (body.width !== undefined && body.across_flats !== undefined)
    refuse('width', 'give across_flats or width, not both');
  if (round && body.flats !== undefined && body.diameter !== undefined && body.flats >= body.diameter)
    refuse('flats', `must be below the diameter, ${body.diameter} mm`);
});

const flangeShapes = ['none', 'round', 'square', 'rectangular', 'two-ear'] as const;
const flangeFields = map({
  shape: word(flangeShapes).optional(),
  diameter: size.optional().describe('of a round flange'),
  width: size.optional().describe('of a square flange'),
  size: widths
    .optional()
    .describe('of a rectangular flange, along X and Y; of a two-ear flange, over the ears and across the middle'),
  ear: size.optional().describe('width of each ear of a two-ear flange'),
  corner: quantity('length', { least: 0, most: 100 }, 'corner radius of a square or rectangular flange').optional(),
  thickness: quantity('length', { above: 0, most: 100 }).optional(),
  offset: quantity('length', { least: 0, most: 200 }, 'stub of the body below the flange face').optional(),
  flats: size.optional().describe('across two flats, one on either side of the X axis'),
}).superRefine((flange, context) => {
  const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
  const shape = flange.shape ?? 'round';
  if (shape === 'none') return;
  if (flange.thickness === undefined) refuse('thickness', 'is missing; must be above 0');
  const needed = { round: 'diameter', square: 'width', rectangular: 'size', 'two-ear': 'size' } as const;
  const sizes = ['diameter', 'width', 'size', 'ear'] as const;
  if (flange[needed[shape]] === undefined) refuse(needed[shape], `is missing; a ${shape} flange needs it`);
  if (
    shape === 'round' &&
    flange.flats !== undefined &&
    flange.diameter !== undefined &&
    flange.flats >= flange.diameter
  )
    refuse('flats', `must be below the diameter, ${flange.diameter} mm`);
  for (const key of sizes) {
    const fits = key === needed[shape] || (key === 'ear' && shape === 'two-ear');
    if (!fits && flange[key] !== undefined) refuse(key, `does not belong to a ${shape} flange`);
  }
});

/** Sheet of a drive nut. */
export const nutSchema = map({
  part: z.literal('nut', 'must be nut'),
  name: partName,
  screw: screwSection,
  body: bodySection,
  flange: flangeFields.optional(),
  holes: holesSection.optional(),
  carriage: map({
    bore: reading(
      'length',
      { above: 0, most: 300 },
      'the hole that the body enters, or the screw alone where the body stands away',
    ).optional(),
    thickness: reading('length', { above: 0, most: 200 }).optional(),
    holes: patternSection.optional(),
  }).optional(),
  float: floatSection.optional().describe('left out: its screws are tightened, and hold it'),
  mounting: word(['flange-up', 'flange-down'], 'where the flange is on the machine').optional(),
  stands: word(['through', 'away'], 'whether the body goes through the carriage or stands away from it').optional(),
  fit: fitSection.optional(),
  lead_in: quantity('length', { least: 0, most: 10 }, 'depth of the chamfer past the thread at both ends').optional(),
  relief: quantity('length', { least: 0, most: 5 }, 'chamfer against the squashed first layer').optional(),
  fillet: quantity('length', { least: 0, most: 20 }, 'between flange and body').optional(),
  mark: orShort(
    map({
      text: z
        .string('must be text')
        .min(1, 'must hold something')
        .max(40, 'must have at most 40 characters')
        .regex(/^[\x20-\x7e]+$/, 'must be plain letters, digits and signs'),
      style: word(['raised', 'engraved']).optional(),
    }),
    (short) => ({ text: short }),
    'string',
  )
    .optional()
    .describe('raised on the flange, or cut into it; broken into lines where it is long'),
  family: variantSection.optional(),
  catch_nut: catchNutSection.optional(),
  calipers: calipersField,
  material: materialSection.optional(),
  printer: printerSection.optional(),
  duty: carriedDutySection.optional(),
  effects: effectsSection.optional(),
  limits: limitsSection.optional(),
});
/** As every printed nut is worked out from, by whichever of its names. */
export type NutSheet = Omit<z.output<typeof nutSchema>, 'part'> & { readonly part: 'nut' | 'twin-nut' };
