import * as z from 'zod';
import { EVEN_IF_WRONG, map, quantity } from '../../sheet/fields.js';
import { calipersField, partName } from '../../sheet/sections/common.js';
import { limitsSection } from '../../sheet/sections/limits.js';
import { materialSection } from '../../sheet/sections/material.js';
import { printerSection } from '../../sheet/sections/printer.js';
import { screwSection } from '../../sheet/sections/screw.js';

const play = (about: string) => quantity('length', { least: 0.05, most: 1 }, about).optional();

/** Sheet of a set of gauge rings: short nuts that are tried on the screw itself. */
export const gaugeSchema = map({
  part: z.literal('gauge', 'must be gauge'),
  name: partName,
  screw: screwSection,
  plays: map({
    from: play('of the tightest ring, along the axis, over both flanks'),
    to: play('of the loosest ring'),
    step: quantity('length', { least: 0.02, most: 0.2 }, 'from ring to ring').optional(),
  }).optional(),
  turns_play: play('along the axis, of the rings of two and of ten turns'),
  outside_diameter: quantity('length', { above: 0, most: 120 }, 'of every ring').optional(),
  calipers: calipersField,
  material: materialSection.optional(),
  printer: printerSection.optional(),
  limits: limitsSection.optional(),
}).superRefine(({ plays }, context) => {
  const { from, to } = plays ?? {};
  if (typeof from === 'number' && typeof to === 'number' && to <= from)
    context.addIssue({ code: 'custom', path: ['plays', 'to'], message: `must be above plays.from, ${from} mm` });
}, EVEN_IF_WRONG);
export type GaugeSheet = z.output<typeof gaugeSchema>;
