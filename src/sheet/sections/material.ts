import * as z from 'zod';
import { map, orShort, quantity, reading, word } from '../fields.js';

const strength = quantity('stress', { above: 0, most: 500 });
const share = quantity('ratio', { least: 0, most: 1 });
const kelvins = (about: string) => z.number('must be a number in K').min(1).max(1000).optional().describe(about);

/** Figures of a material; every one may replace the preset's. */
export const materialFigures = {
  shrink: map({
    plane: reading('ratio', { least: -0.01, most: 0.03 }, 'in the plane of the layers').optional(),
    axial: reading('ratio', { least: -0.01, most: 0.03 }, 'along the print axis').optional(),
  }).optional(),
  density: z.number('must be a number in g/cm³').min(0.5).max(9).optional().describe('g/cm³'),
  softening: quantity('temperature', { least: 30, most: 300 }, 'where the part loses its shape').optional(),
  tensile: strength.optional(),
  tensile_across: strength.optional(),
  shear: strength.optional(),
  bearing: strength
    .optional()
    .describe('what a soft one bears in seconds, pressed all around, before it sinks; left out, 1.2 times its tensile'),
  compressive: strength.optional(),
  modulus: quantity('stress', { above: 0, most: 20000 }).optional(),
  pressure_limit: quantity('stress', { above: 0, most: 100 }, 'moving, smooth surface').optional(),
  pv_limit: quantity('pressure-velocity', { above: 0, most: 10 }, 'dry').optional(),
  creep_share: quantity('ratio', { above: 0, most: 1 }, 'share of the strength that it bears for years').optional(),
  shares: map({
    hour: quantity('ratio', { above: 0, most: 1 }).optional(),
    thousand_hours: quantity('ratio', { above: 0, most: 1 }).optional(),
  })
    .optional()
    .describe('shares of the strength that it bears for an hour, for 1,000 hours'),
  heat: map({
    glass: quantity('temperature', { least: 30, most: 300 }, 'glass transition').optional(),
    standing: kelvins('K in which what it bears for good falls to 37 %'),
    moment: kelvins('K in which what it bears for seconds falls to 37 %'),
  })
    .refine(
      ({ glass, standing, moment }) =>
        glass === undefined
          ? standing !== undefined && moment !== undefined
          : standing === undefined && moment === undefined,
      {
        message: 'must be either glass, or both standing and moment',
      },
    )
    .optional()
    .describe('how strength fades in the warmth: towards the glass transition, or by an exponential'),
  standing_limit: quantity('temperature', { least: 30, most: 300 }, 'above which nothing may stand on it').optional(),
  creep: map({
    hour: quantity('ratio', { above: 0, most: 1 }, 'share of the modulus after an hour').optional(),
    exponent: z.number('must be a number').min(0).max(1).optional().describe('of the fall with hours'),
    strain: quantity('ratio', { above: 0, most: 0.2 }, 'that it takes for good').optional(),
  }).optional(),
  stiffness: map({
    at_40: share.optional(),
    at_60: share.optional(),
    at_80: share.optional(),
    at_100: share.optional(),
  })
    .optional()
    .describe('shares of the modulus that are left at 40, 60, 80 and 100 °C'),
  pressure_cap: quantity('stress', { above: 0, most: 100 }, 'moving, whatever the share of the time').optional(),
  speed_limit: quantity('speed', { above: 0, most: 10000 }, 'sliding on steel').optional(),
  heat_capacity: z.number('must be a number in J/(kg·K)').min(200).max(5000).optional().describe('J/(kg·K)'),
  stress_cracks: word(['yes', 'no'], 'whether oil, solvent or threadlocker cracks it under stress').optional(),
  wear: z.number('must be a number in mm/(km·MPa)').min(0).max(100).optional().describe('mm per km of sliding and MPa'),
  moisture_growth: quantity('ratio', { least: 0, most: 0.05 }, 'from dry to room air').optional(),
};

const materialFields = map({ preset: z.string('must be the name of a material').optional(), ...materialFigures });

/** A material preset by name, figures of one's own, or a preset with some figures replaced. */
export const materialSection = orShort(materialFields, (short) => ({ preset: String(short) }), 'string');
export type MaterialSheet = z.output<typeof materialSection>;
