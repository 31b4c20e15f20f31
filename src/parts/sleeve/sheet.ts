import * as z from 'zod';
import { SHOCK_FACTORS } from '../../mechanics/coupling/service-factors.js';
import { map, quantity, word } from '../../sheet/fields.js';
import { calipersField, partName } from '../../sheet/sections/common.js';
import { limitsSection } from '../../sheet/sections/limits.js';
import { materialSection } from '../../sheet/sections/material.js';
import { printerSection } from '../../sheet/sections/printer.js';
import { screwSection } from '../../sheet/sections/screw.js';
import { LOCATING_HOLDER, PAIR, THRUST_BEARING } from '../common/axial-section.js';
import { gripFields, RETIGHTEN, REVERSING } from '../common/grip-section.js';
import { shaftSection } from '../common/shaft-section.js';

const { grip: _, set_screw: __, ...clampFields } = gripFields;
const endSection = map(clampFields);

/** Sheet of a sleeve: a slit bush for a bore that is too large, or a rigid clamp sleeve that joins two shafts. */
export const sleeveSchema = map({
  part: z.literal('sleeve', 'must be sleeve'),
  name: partName,
  form: word(['bush', 'clamp'], 'bush: fills a bore that is too large; clamp: joins two shafts rigidly'),
  motor: map({
    shaft: shaftSection.optional(),
    torque: quantity('torque', { above: 0, most: 100_000 }, 'holding torque').optional(),
    axial_limit: quantity('force', { above: 0, most: 5000 }, 'along the shaft, that its bearing may carry').optional(),
    temperature: quantity('temperature', { least: -20, most: 150 }, 'of its shaft').optional(),
  }).optional(),
  mounting: word(['motor-below', 'motor-above', 'horizontal'], 'where the motor is').optional(),
  thrust_bearing: THRUST_BEARING,
  pair: PAIR,
  locating_holder: LOCATING_HOLDER,
  retighten: RETIGHTEN,
  shaft: shaftSection.optional().describe('the other shaft; of a bush, the shaft it is pushed on'),
  screw: screwSection.optional().describe('in place of shaft: a screw, held over its crests'),
  turned_end: shaftSection.optional().describe('end of the screw that is turned down, held in place of its crests'),
  bore: quantity('length', { above: 0, most: 60 }, 'of a bush: the bore it fills').optional(),
  length: quantity('length', { above: 0, most: 200 }).optional(),
  outside_diameter: quantity('length', { above: 0, most: 120 }, 'of a clamp sleeve').optional(),
  motor_end: endSection.optional(),
  screw_end: endSection.optional(),
  offset: quantity('length', { least: 0, most: 5 }, 'by which the two shafts are out of line').optional(),
  duty: map({
    load: quantity('force', { least: 0, most: 20_000 }, 'along the screw').optional(),
    upward: quantity('force', { least: 0, most: 20_000 }, 'with which the work lifts the screw').optional(),
    span: quantity('length', { above: 0, most: 5000 }, 'free length of the screw').optional(),
    shock: word(
      Object.keys(SHOCK_FACTORS) as [keyof typeof SHOCK_FACTORS, ...(keyof typeof SHOCK_FACTORS)[]],
    ).optional(),
    reversing: REVERSING,
    temperature: quantity('temperature', { least: -30, most: 150 }, 'around the sleeve').optional(),
    speed: z.number('must be a number in rpm').positive('must be above 0').max(20_000).optional().describe('rpm'),
  }).optional(),
  calipers: calipersField,
  material: materialSection.optional(),
  printer: printerSection.optional(),
  limits: limitsSection.optional(),
}).superRefine((sheet, context) => {
  const refuse = (path: string[], message: string) => context.addIssue({ code: 'custom', path, message });
  if (sheet.screw && sheet.shaft) refuse(['shaft'], 'give screw or shaft, not both');
  if (sheet.turned_end && !sheet.screw) refuse(['turned_end'], 'belongs to a screw; give shaft for a plain one');
  if (!sheet.screw && !sheet.shaft) refuse(['shaft'], 'is missing; give shaft or screw');
  if (sheet.form === 'bush') {
    if (sheet.bore === undefined) refuse(['bore'], 'is missing; a bush fills a bore');
    for (const key of [
      'outside_diameter',
      'motor_end',
      'screw_end',
      'offset',
      'retighten',
      'mounting',
      'thrust_bearing',
      'pair',
      'locating_holder',
    ] as const)
      if (sheet[key] !== undefined) refuse([key], 'does not belong to a bush');
    if (sheet.motor?.shaft) refuse(['motor', 'shaft'], 'does not belong to a bush; give shaft');
    return;
  }
  if (sheet.bore !== undefined) refuse(['bore'], 'does not belong to a clamp sleeve');
  if (!sheet.motor?.shaft) refuse(['motor', 'shaft'], 'is missing; a clamp sleeve joins two shafts');
  if (sheet.motor?.torque === undefined) refuse(['motor', 'torque'], 'is missing; a clamp sleeve is sized by it');
});
export type SleeveSheet = z.output<typeof sleeveSchema>;
