import * as z from 'zod';
import { couplingSchema } from '../parts/coupling/sheet.js';
import { endHolderSchema } from '../parts/end-holder/sheet.js';
import { map, orShort, quantity, reading, word } from '../sheet/fields.js';
import { calipersField, partName, revisionField } from '../sheet/sections/common.js';
import { dutySection } from '../sheet/sections/duty.js';
import { limitsSection } from '../sheet/sections/limits.js';
import { materialSection } from '../sheet/sections/material.js';
import { printerSection } from '../sheet/sections/printer.js';
import { profileSection } from '../sheet/sections/profile.js';
import { screwSection } from '../sheet/sections/screw.js';

const { motor: driveMotor, ...drive } = dutySection.shape;
const joined = couplingSchema.shape;
const length = (about: string, most = 6000) => reading('length', { above: 0, most }, about).optional();

/** The motor, for those parts that hold its shaft and for those that are driven by it. */
export const motorSection = orShort(
  map({
    preset: z.string('must be the name of a preset').optional().describe('a motor frame that ships, for its shaft'),
    ...joined.motor.partial().shape,
    ...driveMotor.unwrap().shape,
  }),
  (short) => ({ preset: short }),
  'string',
);

const lengthsSection = map({
  clear: length(
    'from the face that the shaft of the motor stands out of to the nearest face at the far end: of the end holder, or of the frame before it',
  ),
  far_face: word(['holder', 'frame'], 'what that nearest face belongs to').optional(),
  screw: length('of the screw that is there; left out: the length to order is worked out'),
  start: length(
    'from the face that the shaft of the motor stands out of to where the nut may come at that end, where more than the coupling is in its way',
  ),
  moving: length('of all that moves along the screw, from its first face to its last: carriage, nut and plate'),
  travel: quantity('length', { above: 0, most: 6000 }, 'that the machine must keep').optional(),
  beyond: length('free behind the end holder, into which the screw may stand'),
});

const oldSection = map({
  screw: screwSection.optional().describe('that is taken out'),
  steps_per_mm: z
    .number('must be a number')
    .positive('must be above 0')
    .max(1e7)
    .optional()
    .describe('that the controller holds now'),
});

/** What an axis does: the words of its coupling and of its nut. */
export const axisDuty = map({ ...joined.duty.unwrap().shape, ...drive });

/** Sheet of an axis: what its parts share, the lengths along its screw, and a section for each part. */
export const axisSchema = map({
  part: z.literal('axis', 'must be axis'),
  name: partName,
  units: word(['mm', 'inch'], 'of bare lengths; with inch all that is told states inches beside mm').optional(),
  revision: revisionField.optional(),
  screw: screwSection.describe('the screw of every part'),
  motor: motorSection.optional(),
  mounting: joined.mounting.optional(),
  thrust_bearing: endHolderSchema.shape.thrust_bearing,
  lengths: lengthsSection.optional(),
  old: oldSection.optional().describe('what the controller was set for'),
  calipers: calipersField,
  profile: profileSection.optional(),
  material: materialSection.optional(),
  printer: printerSection.optional(),
  duty: axisDuty.optional(),
  limits: limitsSection.optional().describe('of the checks of the axis; those of a part stand in its own section'),
  parts: z
    .record(partName, z.record(z.string(), z.unknown(), { error: 'must be a map of fields' }), {
      error: 'must be a map: a name for each part, and its fields',
    })
    .describe('a section for each part by its name, such as nut; what it says itself goes before what is said above'),
}).superRefine(({ profile, material, printer }, context) => {
  if (profile === undefined) return;
  for (const [key, value] of Object.entries({ material, printer }))
    if (value !== undefined)
      context.addIssue({
        code: 'custom',
        path: [key],
        message: 'the profile supplies it: give profile, or material and printer',
      });
});
export type AxisSheet = z.output<typeof axisSchema>;
