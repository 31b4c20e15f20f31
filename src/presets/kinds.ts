import * as z from 'zod';
import { map, quantity } from '../sheet/fields.js';
import { materialFigures } from '../sheet/sections/material.js';
import { printerFigures } from '../sheet/sections/printer.js';
import { provenanceSection } from './provenance.js';

const text = z.string('must be text').min(1, 'must not be empty').max(200);
const length = quantity('length', { above: 0, most: 400 });

const head = <const K extends string>(kind: K) => ({
  id: text.regex(/^[a-z0-9.-]+$/, 'must be small letters, digits, points and hyphens'),
  kind: z.literal(kind, `must be ${kind}`),
  title: text,
  provenance: provenanceSection,
});

const block = z.record(z.string(), z.unknown(), { error: 'must be a map of fields' });

const SCHEMAS = {
  material: map({
    ...head('material'),
    ...materialFigures,
  }),
  printer: map({
    ...head('printer'),
    ...printerFigures,
  }),
  screw: map({
    ...head('screw'),
    designation: text,
    suits: text.describe('the printer preset that prints this thread well, or pilot-and-tap'),
    expect: map({
      major: length,
      pitch_diameter: length,
      nut_minor: length,
      nut_major: length.optional(),
      screw_minor: length.optional(),
    }).optional(),
  }),
  flange: map({ ...head('flange'), body: block, flange: block, holes: block.optional() }),
  motor: map({
    ...head('motor'),
    bolt_square: length,
    pilot: length,
    shaft: map({ diameter: length, flat: length.optional().describe('from the flat to the far side') }),
    torque: map({ least: quantity('torque', { above: 0 }), most: quantity('torque', { above: 0 }) }).describe(
      'holding torque met in this frame',
    ),
  }),
} as const;

/** A kind of preset. */
export type PresetKind = keyof typeof SCHEMAS;

/** The content of each kind of preset, in base units. */
type PresetContents = { readonly [K in PresetKind]: z.output<(typeof SCHEMAS)[K]> };

/** A preset's content in base units. */
export type PresetData<K extends PresetKind> = PresetContents[K];

/** The schema of each kind of preset. */
export const PRESET_SCHEMAS: { readonly [K in PresetKind]: z.ZodType<PresetContents[K]> } = SCHEMAS;

/** Where the files of each kind lie below presets/. */
export const PRESET_FOLDERS: Readonly<Record<PresetKind, string>> = {
  material: 'materials',
  printer: 'printers',
  screw: 'screws',
  flange: 'flanges',
  motor: 'motors',
};

/** Figures that a preset of a kind cannot do without, beyond what its schema asks for. */
export const NEEDED_FIGURES: Readonly<Partial<Record<PresetKind, readonly string[]>>> = {
  material: [
    'shrink.plane',
    'shrink.axial',
    'density',
    'softening',
    'tensile',
    'tensile_across',
    'shear',
    'compressive',
    'modulus',
    'pressure_limit',
    'pv_limit',
    'creep_share',
    'moisture_growth',
  ],
  printer: ['nozzle', 'layer', 'line_width', 'hole_offset', 'outside_offset'],
};
