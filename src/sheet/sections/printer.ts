import * as z from 'zod';
import { map, orShort, quantity, word } from '../fields.js';

const offsetLine = map({
  at_zero: quantity('length', { least: -1, most: 1 }),
  per_mm: z.number('must be a number').min(-0.05).max(0.05).describe('mm of offset per mm of diameter'),
});
const atZero = (short: unknown) => ({ at_zero: short, per_mm: 0 });
const spread = quantity('length', { least: 0, most: 1 }, 'what stays uncertain of it, as a half-width').optional();

const compensator = ['file', 'slicer', 'none'] as const;
const compensationFields = map({
  shrink: word(compensator, 'who scales for shrink: this file, the slicer, or nobody').optional(),
  holes: word(compensator, 'who enlarges holes: this file, the slicer, or nobody').optional(),
});

/** Figures of a printer and its settings; every one may replace the preset's. */
export const printerFigures = {
  nozzle: quantity('length', { least: 0.1, most: 1.5 }).optional(),
  layer: quantity('length', { least: 0.02, most: 1 }, 'layer height').optional(),
  line_width: quantity('length', { least: 0.1, most: 2 }).optional(),
  hole_offset: orShort(offsetLine.extend({ spread }), atZero, 'quantity')
    .describe('how much smaller than modelled a hole comes out, on the diameter, shrink aside')
    .optional(),
  outside_offset: orShort(offsetLine, atZero, 'quantity')
    .describe('how much smaller than modelled an outside comes out, on the diameter, shrink aside')
    .optional(),
  first_layer: quantity('length', { least: 0, most: 1 }, 'how far the squashed first layer spreads, a side').optional(),
};

const printerFields = map({
  preset: z.string('must be the name of a printer preset').optional(),
  ...printerFigures,
  compensation: orShort(compensationFields, (short) => ({ shrink: short, holes: short }), 'string').optional(),
  chord_error: quantity('length', { least: 0.001, most: 0.1 }, 'how far a facet may be off its arc').optional(),
  bridging: word(
    ['membrane', 'steps', 'none'],
    'roofs over pockets that open on the bed: one layer to be drilled through, or steps that turn the rim of the hole into bridges',
  ).optional(),
});

/** A printer preset by name, settings of one's own, or a preset with some settings replaced. */
export const printerSection = orShort(printerFields, (short) => ({ preset: String(short) }), 'string');
export type PrinterSheet = z.output<typeof printerSection>;
