import * as z from 'zod';
import { map, orShort, quantity, reading } from '../fields.js';

const strength = quantity('stress', { above: 0, most: 500 });

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
  compressive: strength.optional(),
  modulus: quantity('stress', { above: 0, most: 20000 }).optional(),
  pressure_limit: quantity('stress', { above: 0, most: 100 }, 'moving, smooth surface').optional(),
  pv_limit: quantity('pressure-velocity', { above: 0, most: 10 }, 'dry').optional(),
  creep_share: quantity('ratio', { above: 0, most: 1 }, 'long-term share of the short-term yield').optional(),
  wear: z.number('must be a number in mm/(km·MPa)').min(0).max(100).optional().describe('mm per km of sliding and MPa'),
  moisture_growth: quantity('ratio', { least: 0, most: 0.05 }, 'from dry to room air').optional(),
};

const materialFields = map({ preset: z.string('must be the name of a material').optional(), ...materialFigures });

/** A material preset by name, figures of one's own, or a preset with some figures replaced. */
export const materialSection = orShort(materialFields, (short) => ({ preset: String(short) }), 'string');
export type MaterialSheet = z.output<typeof materialSection>;
