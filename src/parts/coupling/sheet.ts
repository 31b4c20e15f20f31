import * as z from 'zod';
import { SHOCK_FACTORS } from '../../mechanics/coupling/service-factors.js';
import { map, orShort, quantity, whole, word } from '../../sheet/fields.js';
import { calipersField, partName } from '../../sheet/sections/common.js';
import { limitsSection } from '../../sheet/sections/limits.js';
import { materialSection } from '../../sheet/sections/material.js';
import { printerSection } from '../../sheet/sections/printer.js';
import { screwSection } from '../../sheet/sections/screw.js';
import { LOCATING_HOLDER, PAIR, THRUST_BEARING } from '../common/axial-section.js';
import { gripFields, RETIGHTEN, REVERSING } from '../common/grip-section.js';
import { shaftSection } from '../common/shaft-section.js';

const size = (most: number, about: string) => quantity('length', { above: 0, most }, about).optional();
const small = (about: string) => quantity('length', { least: 0, most: 10 }, about).optional();

const motorSection = map({
  shaft: shaftSection.optional().describe('left out: no motor hub is made'),
  torque: quantity('torque', { above: 0, most: 100_000 }, 'holding torque'),
  axial_limit: quantity('force', { above: 0, most: 5000 }, 'along the shaft, that its bearing may carry').optional(),
  temperature: quantity('temperature', { least: -20, most: 150 }, 'of its shaft').optional(),
});

const hubSection = map({
  ...gripFields,
  length: size(150, 'of the hub without its jaws'),
  stop: word(['cone', 'none'], 'what ends the bore, so that the shaft goes in just so far').optional(),
});

const jawSection = map({
  count: whole(2, 6, 'jaws of one hub').optional(),
  height: size(60, 'over the floor between the jaws'),
  width: size(60, 'across a jaw, flank to flank, midway between inner and outside diameter'),
  inner: size(100, 'diameter of the room inside the jaws, tip to tip across the axis'),
  flank: word(['straight', 'curved']).optional(),
  draft: quantity('angle', { least: 0, most: 5 }, 'of the flanks').optional(),
  fillet: small('at the foot of a jaw'),
  bevel: small('of the tips'),
});

const insertSection = map({
  flank_clearance: quantity(
    'length',
    { least: -0.3, most: 1 },
    'at each flank; below 0 the lobes are squeezed',
  ).optional(),
  height: size(60, 'of the lobes, along the axis'),
  lobes: word(['straight', 'barrelled']).optional(),
  center: word(['ring', 'solid']).optional(),
  hole: size(60, 'diameter of the hole in the ring'),
  pad: orShort(
    map({
      kind: word(['disc', 'ball', 'soft', 'none'], 'what both shaft ends stand on'),
      diameter: size(60, 'of the disc or the ball'),
      thickness: size(30, 'of the disc'),
    }),
    (short) => ({ kind: short }),
    'string',
  ).optional(),
  material: materialSection.optional(),
  hardness: z
    .string('must be text such as 95 Shore A')
    .regex(/^\d{2}(\.\d)? Shore [AD]$/, 'must be a reading with its scale, such as 95 Shore A or 64 Shore D')
    .optional(),
  printer: printerSection.optional(),
});

/** Sheet of a jaw coupling. */
export const couplingSchema = map({
  part: z.literal('coupling', 'must be coupling'),
  name: partName,
  motor: motorSection,
  screw: screwSection.optional().describe('the driven screw, held over its crests'),
  shaft: shaftSection.optional().describe('the driven shaft, where its end is turned down or it is no screw'),
  turned_end: shaftSection.optional().describe('end of the screw that is turned down, held in place of its crests'),
  mounting: word(['motor-below', 'motor-above', 'horizontal'], 'where the motor is'),
  thrust_bearing: THRUST_BEARING,
  pair: PAIR,
  locating_holder: LOCATING_HOLDER,
  retighten: RETIGHTEN,
  hubs: map({ outside_diameter: size(120, 'of both hubs; of a bought one measured over its jaws') }).optional(),
  motor_hub: hubSection.optional(),
  screw_hub: hubSection.optional(),
  jaws: jawSection.optional(),
  insert: insertSection.optional(),
  misalignment: map({
    angular: quantity('angle', { least: 0, most: 5 }).optional(),
    parallel: quantity('length', { least: 0, most: 3 }).optional(),
    axial: quantity('length', { least: 0, most: 3 }).optional(),
  }).optional(),
  duty: map({
    load: quantity('force', { least: 0, most: 20_000 }, 'along the screw').optional(),
    upward: quantity('force', { least: 0, most: 20_000 }, 'with which the work lifts the screw').optional(),
    span: quantity('length', { above: 0, most: 5000 }, 'free length of the screw').optional(),
    reversing: REVERSING,
    temperature: quantity('temperature', { least: -30, most: 120 }, 'around the coupling').optional(),
    speed: z.number('must be a number in rpm').positive('must be above 0').max(20_000).optional().describe('rpm'),
    starts: z.number('must be a number').min(0).max(20_000).optional().describe('starts and reversals an hour'),
    shock: word(
      Object.keys(SHOCK_FACTORS) as [keyof typeof SHOCK_FACTORS, ...(keyof typeof SHOCK_FACTORS)[]],
    ).optional(),
  }).optional(),
  calipers: calipersField,
  material: materialSection.optional(),
  printer: printerSection.optional(),
  limits: limitsSection.optional(),
}).superRefine((sheet, context) => {
  const refuse = (path: string[], message: string) => context.addIssue({ code: 'custom', path, message });
  if (sheet.screw && sheet.shaft) refuse(['shaft'], 'give screw or shaft, not both');
  if (sheet.turned_end && !sheet.screw) refuse(['turned_end'], 'belongs to a screw; give shaft for a plain one');
  const anyShaft = sheet.screw || sheet.shaft || sheet.motor.shaft;
  if (!anyShaft && sheet.hubs?.outside_diameter === undefined)
    refuse(
      ['hubs', 'outside_diameter'],
      'is missing; without a motor shaft and a screw only the insert is made, for two bought hubs: measure their outside and jaws',
    );
  const pad = sheet.insert?.pad?.kind;
  if (sheet.insert?.center === 'solid' && pad !== undefined && pad !== 'soft')
    refuse(['insert', 'center'], `a ${pad} wants a ring`);
  if (sheet.insert?.center === 'ring' && pad === 'soft') refuse(['insert', 'center'], 'a soft pad is a solid centre');
});
export type CouplingSheet = z.output<typeof couplingSchema>;
