import * as z from 'zod';
import { map, orShort, quantity, reading, word } from '../../sheet/fields.js';
import { calipersField, partName } from '../../sheet/sections/common.js';
import { dutySection } from '../../sheet/sections/duty.js';
import { patternSection } from '../../sheet/sections/holes.js';
import { limitsSection } from '../../sheet/sections/limits.js';
import { materialSection } from '../../sheet/sections/material.js';
import { printerSection } from '../../sheet/sections/printer.js';
import { screwSection } from '../../sheet/sections/screw.js';

const size = quantity('length', { above: 0, most: 300 });

const bearingSection = orShort(
  map({
    designation: z
      .union([z.string(), z.number()], 'must be a designation such as 608')
      .transform(String)
      .optional()
      .describe('by ISO 15: 608, 625, 6900; F608 with a flange on its outer ring'),
    bore: quantity('length', { least: 2, most: 60 }, 'of the inner ring').optional(),
    outside: quantity('length', { least: 4, most: 120 }, 'of the outer ring').optional(),
    width: quantity('length', { least: 1, most: 60 }, 'of the rings').optional(),
    chamfer: quantity('length', { least: 0.05, most: 3 }, 'least chamfer of the rings').optional(),
    flange: map({
      outside: quantity('length', { least: 5, most: 130 }, 'of the flange').optional(),
      thickness: quantity('length', { least: 0.3, most: 10 }, 'of the flange').optional(),
    })
      .optional()
      .describe('on the outer ring; as measured, or by a designation with F'),
  }),
  (short) => ({ designation: short }),
  'quantity',
);

/** Sheet of an end holder: what the far end of a screw runs in. */
export const endHolderSchema = map({
  part: z.literal('end-holder', 'must be end-holder'),
  name: partName,
  role: word(
    ['free', 'guiding', 'locating'],
    'free: a guard ring that touches nothing; guiding: carries sideways alone; locating: carries along the screw too',
  ),
  screw: screwSection,
  turned_end: reading('length', { least: 2, most: 60 }, 'of the screw, held in place of its crests').optional(),
  bearing: bearingSection.optional().describe('a deep-groove ball bearing; without it the screw runs in a plain bush'),
  held_by: word(
    ['press', 'plate', 'lip'],
    'what keeps the bearing in its pocket; lip: a ring that gives while the bearing is pushed in',
  ).optional(),
  bore: quantity('length', { least: 2, most: 80 }, 'finished, of a bush or a guard ring').optional(),
  fit: map({
    interference: quantity('length', { least: -0.5, most: 0.5 }, 'bearing over pocket, on the diameter').optional(),
    pocket: reading(
      'length',
      { least: 4, most: 120 },
      'as measured on a print of it, in place of what is expected',
    ).optional(),
    lip: quantity(
      'length',
      { above: 0, most: 1 },
      'how far the lip reaches in over the outer ring, per side',
    ).optional(),
    shoulder: quantity('length', { above: 0, most: 120 }, 'opening behind the outer ring').optional(),
  }).optional(),
  body: map({
    length: size.optional().describe('along x'),
    width: size.optional().describe('along y'),
    thickness: size.optional().describe('from the frame to the outer face'),
    cover: size.optional().describe('thickness of the plate over the bearing'),
  }).optional(),
  holes: patternSection.describe('to the frame'),
  frame: map({
    thickness: quantity('length', { above: 0, most: 200 }, 'of what the screws go through').optional(),
  }).optional(),
  mounting: word(['motor-below', 'motor-above', 'horizontal'], 'where the motor is').optional(),
  coupling: word(
    ['rigid', 'disc', 'flexible'],
    'at the motor: rigid sleeve, disc between the shaft ends, or one that gives along and across',
  ).optional(),
  thrust_bearing: word(
    ['yes', 'no'],
    'a bearing and collar at the motor end carry the screw along its axis',
  ).optional(),
  nut: word(['rigid', 'floating'], 'how the nut sits on its carriage').optional(),
  runout: quantity(
    'length',
    { least: 0, most: 5 },
    'of the screw at this end: half of what a dial shows in a turn',
  ).optional(),
  nut_gap: quantity('length', { least: 0, most: 1000 }, 'from the nut to the holder at the end of travel').optional(),
  end_room: quantity('length', { least: 0, most: 100 }, 'along the screw, before something stops its end').optional(),
  calipers: calipersField,
  material: materialSection.optional(),
  printer: printerSection.optional(),
  duty: dutySection.optional(),
  limits: limitsSection.optional(),
}).superRefine((sheet, context) => {
  const refuse = (path: string[], message: string) => context.addIssue({ code: 'custom', path, message });
  const { role, bearing } = sheet;
  if (role === 'free' && bearing !== undefined) refuse(['bearing'], 'a guard ring touches nothing; use role: guiding');
  if (role === 'locating' && bearing === undefined)
    refuse(['bearing'], 'is missing; a plain bush carries nothing along the screw');
  if (bearing !== undefined && sheet.bore !== undefined) refuse(['bore'], 'belongs to a bush or a guard ring');
  if (bearing === undefined)
    for (const field of ['held_by', 'fit'] as const)
      if (sheet[field] !== undefined) refuse([field], 'belongs to a bearing');
  if (sheet.fit?.lip !== undefined && sheet.held_by !== 'lip') refuse(['fit', 'lip'], 'belongs to held_by: lip');
  const flanged = bearing?.flange !== undefined || /^F\d/i.test(bearing?.designation ?? '');
  if (flanged && sheet.held_by === 'lip')
    refuse(['held_by'], 'a flange stands where the lip would be; use press or plate');
  if (flanged && sheet.fit?.shoulder !== undefined)
    refuse(['fit', 'shoulder'], 'does not belong to a flanged bearing: its pocket goes through');
  if (sheet.body?.cover !== undefined && sheet.held_by !== 'plate')
    refuse(['body', 'cover'], 'belongs to held_by: plate');
});
export type EndHolderSheet = z.output<typeof endHolderSchema>;
