import * as z from 'zod';
import { map, quantity, reading, word } from '../../sheet/fields.js';
import { calipersField, partName } from '../../sheet/sections/common.js';
import { dutySection } from '../../sheet/sections/duty.js';
import { patternSection } from '../../sheet/sections/holes.js';
import { limitsSection } from '../../sheet/sections/limits.js';
import { materialSection } from '../../sheet/sections/material.js';
import { printerSection } from '../../sheet/sections/printer.js';
import { screwSection } from '../../sheet/sections/screw.js';
import { FASTENER_SIZES } from '../../standards/fasteners/sizes.js';
import { LOCATING_HOLDER, THRUST_BEARING } from '../common/axial-section.js';
import { shaftSection } from '../common/shaft-section.js';
import { refuseBearing, thrustSection } from '../common/thrust-section.js';

const size = quantity('length', { above: 0, most: 300 });
const along = (about: string) => quantity('length', { above: 0, most: 300 }, about).optional();

const motorSection = map({
  square: reading('length', { least: 8, most: 150 }, 'side of the square on which its holes stand'),
  pilot: reading('length', { least: 5, most: 150 }, 'over the round of its face that centres it'),
  pilot_height: quantity('length', { above: 0, most: 20 }).optional(),
  screw: word(FASTENER_SIZES, 'that holds it'),
  thread_depth: quantity('length', { above: 0, most: 40 }, 'of the threads in its face').optional(),
  flange: quantity(
    'length',
    { above: 0, most: 40 },
    'thickness of its face, where bolts go through it and it has no threads',
  ).optional(),
  body: along('side of its square body'),
  length: along('of its body, without the shaft'),
  weight: quantity('force', { above: 0, most: 500 }).optional(),
  shaft: shaftSection.optional(),
  torque: quantity('torque', { above: 0, most: 100_000 }, 'holding torque').optional(),
  axial_limit: quantity('force', { above: 0, most: 5000 }, 'along the shaft, that its bearing may carry').optional(),
  temperature: quantity('temperature', { least: -20, most: 150 }, 'of its face').optional(),
}).superRefine(({ thread_depth, flange }, context) => {
  if (thread_depth === undefined && flange === undefined)
    context.addIssue({
      code: 'custom',
      path: ['thread_depth'],
      message: 'is missing; give the depth of its threads, or flange where bolts go through',
    });
});

/** Sheet of a motor plate: what a motor is bolted to, and how that is bolted to the machine. */
export const motorPlateSchema = map({
  part: z.literal('motor-plate', 'must be motor-plate'),
  name: partName,
  motor: motorSection,
  motor_heads: word(['proud', 'sunk'], 'heads of the motor’s screws on the outer face, or in pockets').optional(),
  machine: map({
    holes: patternSection,
    face: word(
      ['motor', 'outer'],
      'the face of the plate that lies on the machine: that on which the motor lies too, or the outer one',
    ),
    joint: word(['through', 'insert'], 'bolts through the plate, or screws from the machine into inserts').optional(),
    bare: word(['clear', 'tapped'], 'whether its holes carry a thread of their own').optional(),
    thickness: along('of what the screws go through'),
    opening: along('across the opening behind the plate, where it is narrowest'),
  }),
  slots: map({
    along: word(['x', 'y'], 'the way in which the plate is set'),
    by: quantity('length', { least: 0.2, most: 40 }, 'each way'),
  })
    .optional()
    .describe('the holes to the machine as slots'),
  plate: map({
    length: size.optional().describe('along x'),
    width: size.optional().describe('along y'),
    thickness: quantity('length', { least: 1, most: 60 }).optional(),
  }).optional(),
  fit: map({
    pilot: quantity('length', { least: 0, most: 3 }, 'play of the pilot in its hole, on the diameter').optional(),
  }).optional(),
  drive: word(['coupling', 'belt'], 'what the shaft drives').optional(),
  belt_pull: quantity('force', { above: 0, most: 2000 }, 'of both runs together, on the shaft').optional(),
  coupling: word(
    ['rigid', 'disc', 'flexible'],
    'rigid sleeve, disc between the shaft ends, or one that gives along and across',
  ).optional(),
  coupling_angle: quantity('angle', { above: 0, most: 10 }, 'that the coupling takes').optional(),
  hub_depth: along('of shaft that goes into the coupling'),
  mounting: word(['motor-below', 'motor-above', 'horizontal'], 'where the motor is').optional(),
  thrust_bearing: THRUST_BEARING,
  bearing_on: word(
    ['plate', 'machine'],
    'what the thrust bearing stands in: this plate, or a part of the machine',
  ).optional(),
  bearing: thrustSection.optional().describe('thrust bearing that stands in this plate'),
  locating_holder: LOCATING_HOLDER,
  screw: screwSection.optional().describe('that the motor turns; gives the force of a stalled motor'),
  calipers: calipersField,
  material: materialSection.optional(),
  printer: printerSection.optional(),
  duty: dutySection.optional(),
  limits: limitsSection.optional(),
}).superRefine((sheet, context) => {
  const refuse = (path: string[], message: string) => context.addIssue({ code: 'custom', path, message });
  const { machine, slots, drive } = sheet;
  if (slots && machine.joint === 'insert') refuse(['slots'], 'belong to bolts through the plate; inserts stand still');
  if (machine.joint === 'insert' && machine.holes.screw === undefined)
    refuse(['machine', 'holes', 'screw'], 'is missing; an insert needs a screw size');
  if (machine.joint === 'insert' && machine.bare === 'tapped')
    refuse(['machine', 'joint'], 'two threads cannot hold each other; use joint: through');
  refuseBearing(sheet.bearing, refuse);
  if (drive === 'belt')
    for (const field of ['coupling', 'coupling_angle', 'hub_depth'] as const)
      if (sheet[field] !== undefined) refuse([field], 'belongs to drive: coupling');
  if (drive !== 'belt' && sheet.belt_pull !== undefined) refuse(['belt_pull'], 'belongs to drive: belt');
});
export type MotorPlateSheet = z.output<typeof motorPlateSchema>;
