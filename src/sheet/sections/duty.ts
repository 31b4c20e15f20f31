import * as z from 'zod';
import { plain } from '../../units/format.js';
import { EVEN_IF_WRONG, map, quantity, whole, word } from '../fields.js';

/** Two statements of the share in motion may differ by so much. */
const SAME_SHARE = 0.03;

/** Ways in which a load goes through a flange: it pulls the flange off its carriage, or presses it on. */
export const PULLS = ['away', 'onto'] as const;
export type Pull = (typeof PULLS)[number];

/** How the part is used. Nothing here has a silent default that a check would rest on. */
export const dutySection = map({
  axis: word(['vertical', 'horizontal']).optional(),
  load: quantity('force', { above: 0, most: 20000 }, 'along the screw').optional(),
  pull: word(PULLS, 'where the standing load goes: the flange off its carriage, or onto it').optional(),
  moving: quantity('ratio', { least: 0, most: 1 }, 'share of the time in motion').optional(),
  on_time: quantity('time', { above: 0, most: 1e6 }, 'in motion, in one go').optional(),
  cycle: quantity('time', { above: 0, most: 1e6 }, 'from one start to the next').optional(),
  temperature: quantity('temperature', { least: -40, most: 250 }, 'around the part').optional(),
  grease: word(['dry', 'greased']).optional(),
  regrease: word(['yes', 'no'], 'whether grease is put on again and again').optional(),
  dust: word(['yes', 'no'], 'grit, chips or fibres around the screw').optional(),
  feed: quantity('speed', { above: 0, most: 2000 }).optional(),
  motor: map(
    {
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
    },
    'must be a map such as {torque: 0.4 N m}, read off the label: a frame does not say what its motors raise',
  ).optional(),
  span: quantity('length', { above: 0, most: 5000 }, 'free length of the screw').optional(),
  ends: word(['fixed-free', 'supported', 'fixed-supported', 'fixed-fixed']).optional(),
  layer_heights: z
    .array(quantity('length', { above: 0, most: 2 }), 'must be a list of heights')
    .max(50)
    .optional(),
}).superRefine(({ on_time, cycle, moving }, context) => {
  if (typeof on_time !== 'number' || typeof cycle !== 'number') return;
  const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
  if (on_time > cycle) refuse('on_time', `must be at most the cycle, ${plain(cycle)} s`);
  else if (typeof moving === 'number' && Math.abs(moving - on_time / cycle) > SAME_SHARE)
    refuse('moving', `does not agree with on_time over cycle, ${plain((100 * on_time) / cycle, 1)} %`);
}, EVEN_IF_WRONG);
export type DutySheet = z.output<typeof dutySection>;

/** The same of what a nut carries: work may lift it. */
export const carriedDutySection = dutySection.safeExtend({
  upward: quantity(
    'force',
    { least: 0, most: 20000 },
    'with which the work lifts what the nut carries, against the weight on it',
  ).optional(),
});
export type CarriedDuty = z.output<typeof carriedDutySection>;
