import * as z from 'zod';
import { map, quantity, whole, word } from '../fields.js';

/** How the part is used. Nothing here has a silent default that a check would rest on. */
export const dutySection = map({
  axis: word(['vertical', 'horizontal']).optional(),
  load: quantity('force', { above: 0, most: 20000 }, 'along the screw').optional(),
  moving: quantity('ratio', { least: 0, most: 1 }, 'share of the time in motion').optional(),
  temperature: quantity('temperature', { least: -40, most: 250 }, 'around the part').optional(),
  grease: word(['dry', 'greased']).optional(),
  feed: quantity('speed', { above: 0, most: 2000 }).optional(),
  motor: map({
    steps: whole(4, 4000, 'full steps a turn').optional(),
    microsteps: whole(1, 1024).optional(),
    gear: z
      .number('must be a number')
      .positive('must be above 0')
      .max(1000)
      .optional()
      .describe('motor turns per screw turn'),
    torque: quantity('torque', { above: 0, most: 200_000 }, 'holding torque').optional(),
    current: quantity('current', { above: 0, most: 50 }, 'rated, per phase').optional(),
    inductance: quantity('inductance', { above: 0, most: 1000 }, 'per phase').optional(),
    voltage: quantity('voltage', { above: 0, most: 400 }, 'of the supply').optional(),
    speed: z
      .number('must be a number in rpm')
      .positive('must be above 0')
      .max(10000)
      .optional()
      .describe('rpm up to which the motor is useful'),
  }).optional(),
  span: quantity('length', { above: 0, most: 5000 }, 'free length of the screw').optional(),
  ends: word(['fixed-free', 'supported', 'fixed-supported', 'fixed-fixed']).optional(),
  layer_heights: z
    .array(quantity('length', { above: 0, most: 2 }), 'must be a list of heights')
    .max(50)
    .optional(),
});
export type DutySheet = z.output<typeof dutySection>;
