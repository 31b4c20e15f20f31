import * as z from 'zod';
import { map, quantity, reading, whole, word } from '../sheet/fields.js';
import { materialFigures } from '../sheet/sections/material.js';
import { printerFigures } from '../sheet/sections/printer.js';
import { SLICER_ANSWERS, STATES } from '../sheet/sections/profile.js';
import { FASTENER_SIZES } from '../standards/fasteners/sizes.js';
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

const room = reading('length', { least: -2, most: 2 }).optional();

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
  flange: map({
    ...head('flange'),
    body: block,
    flange: block,
    holes: block.optional(),
    seen: map({
      body: length.optional(),
      flange: length.optional(),
      thickness: length.optional(),
      circle: length.optional(),
      hole: length.optional(),
    })
      .optional()
      .describe('how far delivered parts were seen off these sizes, each way'),
  }),
  motor: map({
    ...head('motor'),
    bolt_square: length,
    pilot: length,
    pilot_height: length,
    body: length.describe('side of its square body, at most'),
    face: map({
      screw: word(FASTENER_SIZES, 'that holds it'),
      thread_depth: length.optional().describe('of threads in its face, at least'),
      flange: length.optional().describe('thickness of a face that bolts go through'),
    }),
    shaft: map({ diameter: length, flat: length.optional().describe('from the flat to the far side') }),
    torque: map({ least: quantity('torque', { above: 0 }), most: quantity('torque', { above: 0 }) }).describe(
      'holding torque met in this frame',
    ),
  }),
  profile: map({
    ...head('profile'),
    revision: whole(1, 9999, 'counted up whenever readings are added'),
    state: word(STATES, 'of the coupon when it was read'),
    slicer_compensates: word(SLICER_ANSWERS, 'what the slicer corrected by itself, and must go on correcting'),
    material: map({ preset: text, ...materialFigures }),
    printer: map(printerFigures),
    fit: map({
      diametral: quantity('length', { least: -1, most: 3 }),
      axial: quantity('length', { least: -1, most: 3 }),
    })
      .optional()
      .describe('clearances of a thread that the hand likes'),
    pockets: map({ hexagon: room, insert: room, shaft: room, d_shaft: room })
      .optional()
      .describe('room that the hand likes around what goes into a pocket'),
    runs: z.array(block, 'must be a list of results').min(1).max(200).describe('every reading the figures rest on'),
    trials: z.array(block, 'must be a list of trials').max(200).optional().describe('what was seen on finished nuts'),
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
  profile: 'profiles',
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
    'shares.hour',
    'shares.thousand_hours',
    'heat',
    'standing_limit',
    'creep.hour',
    'creep.exponent',
    'creep.strain',
    'stiffness.at_40',
    'stiffness.at_60',
    'stiffness.at_80',
    'stiffness.at_100',
    'pressure_cap',
    'speed_limit',
    'heat_capacity',
    'moisture_growth',
  ],
  printer: ['nozzle', 'layer', 'line_width', 'hole_offset', 'outside_offset'],
  profile: ['printer.nozzle', 'printer.layer', 'printer.line_width', 'printer.hole_offset', 'printer.outside_offset'],
};
