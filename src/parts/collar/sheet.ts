import * as z from 'zod';
import { map, quantity, word } from '../../sheet/fields.js';
import { calipersField, partName } from '../../sheet/sections/common.js';
import { limitsSection } from '../../sheet/sections/limits.js';
import { materialSection } from '../../sheet/sections/material.js';
import { printerSection } from '../../sheet/sections/printer.js';
import { screwSection } from '../../sheet/sections/screw.js';
import { PAIR } from '../common/axial-section.js';
import { fitSection } from '../common/fit-section.js';
import { gripFields, RETIGHTEN } from '../common/grip-section.js';
import { shaftSection } from '../common/shaft-section.js';
import { refuseBearing, thrustSection } from '../common/thrust-section.js';

const { grip: _, set_screw: __, ...clampFields } = gripFields;

/** Sheet of a collar: a slit clamp that holds a screw or a shaft along its axis, with the seat of a thrust bearing. */
export const collarSchema = map({
  part: z.literal('collar', 'must be collar'),
  name: partName,
  screw: screwSection.optional().describe('held over its crests, or by its own thread'),
  turned_end: shaftSection.optional().describe('end of the screw that is turned down, held in place of its crests'),
  shaft: shaftSection.optional().describe('in place of screw: a plain shaft'),
  bore: word(
    ['plain', 'thread'],
    'plain: holds by friction alone; thread: the screw’s own thread, locked by the clamp and a pin',
  ).optional(),
  fit: fitSection.optional().describe('of a threaded bore, before the clamp closes'),
  form: word(
    ['slit', 'halves'],
    'slit: pushed on from the end, closed by the screws of one side; halves: put on from the side, screws on both',
  ).optional(),
  pin: quantity('length', { above: 0, most: 6 }, 'diameter of a spring pin through collar and screw').optional(),
  bearing: thrustSection.optional().describe('thrust bearing that the collar runs on'),
  backed_by: word(
    ['nothing', 'metal-collar'],
    'metal-collar: a bought clamp collar behind this one carries what pulls along the screw',
  ).optional(),
  pair: PAIR,
  mounting: word(['motor-below', 'motor-above', 'horizontal'], 'where the motor is').optional(),
  hold: map(clampFields).optional().describe('how it is clamped'),
  outside_diameter: quantity('length', { above: 0, most: 120 }).optional(),
  length: quantity('length', { above: 0, most: 100 }).optional(),
  retighten: RETIGHTEN,
  motor: map({
    torque: quantity(
      'torque',
      { above: 0, most: 100_000 },
      'holding torque: what pushes when the axis jams',
    ).optional(),
  }).optional(),
  duty: map({
    load: quantity('force', { least: 0, most: 20_000 }, 'along the screw').optional(),
    upward: quantity('force', { least: 0, most: 20_000 }, 'with which the work lifts the screw').optional(),
    span: quantity('length', { above: 0, most: 5000 }, 'length of the screw that hangs on it').optional(),
    temperature: quantity(
      'temperature',
      { least: -30, most: 150 },
      'around the collar; on a motor plate that of the motor',
    ).optional(),
  }).optional(),
  calipers: calipersField,
  material: materialSection.optional(),
  printer: printerSection.optional(),
  limits: limitsSection.optional(),
}).superRefine((sheet, context) => {
  const refuse = (path: string[], message: string) => context.addIssue({ code: 'custom', path, message });
  const { screw, shaft, turned_end, bearing } = sheet;
  if (screw && shaft) refuse(['shaft'], 'give screw or shaft, not both');
  if (!screw && !shaft) refuse(['screw'], 'is missing; give screw or shaft');
  if (turned_end && !screw) refuse(['turned_end'], 'belongs to a screw; give shaft for a plain one');
  const isThreaded = sheet.bore === 'thread';
  if (isThreaded && (shaft || turned_end)) refuse(['bore'], 'must be plain on a shaft or a turned end');
  for (const key of ['fit', 'pin'] as const)
    if (!isThreaded && sheet[key] !== undefined) refuse([key], 'belongs to a threaded bore (bore: thread)');
  for (const key of ['bore_clearance', 'friction', 'degreased'] as const)
    if (isThreaded && sheet.hold?.[key] !== undefined)
      refuse(['hold', key], 'does not belong to a threaded bore, which holds by its flanks');
  refuseBearing(bearing, refuse);
});
export type CollarSheet = z.output<typeof collarSchema>;
