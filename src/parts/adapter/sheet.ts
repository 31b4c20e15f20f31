import * as z from 'zod';
import { map, orShort, quantity, reading, word } from '../../sheet/fields.js';
import { calipersField, partName } from '../../sheet/sections/common.js';
import { carriedDutySection } from '../../sheet/sections/duty.js';
import { floatSection } from '../../sheet/sections/float.js';
import { patternSection } from '../../sheet/sections/holes.js';
import { limitsSection } from '../../sheet/sections/limits.js';
import { materialSection } from '../../sheet/sections/material.js';
import { printerSection } from '../../sheet/sections/printer.js';
import { screwSection } from '../../sheet/sections/screw.js';
import { catchNutSection } from '../common/bought-nut.js';
import { JOINTS } from '../common/joints.js';

const size = quantity('length', { above: 0, most: 400 });
const place = quantity('length', { least: -300, most: 300 });
const point = z.tuple([place, place], 'must be two distances: [12 mm, -4 mm]');
const widths = z.tuple([size, size], 'must be two sizes: [40 mm, 24 mm]');
const bare = word(['clear', 'tapped'], 'whether the holes carry a thread of their own');

const nutSection = map({
  body: reading('length', { above: 0, most: 200 }, 'diameter of the body'),
  length: reading('length', { above: 0, most: 300 }, 'over all, flange included').optional(),
  flange: map({
    shape: word(['round', 'square', 'rectangular']).optional(),
    diameter: reading('length', { above: 0, most: 300 }, 'of a round flange').optional(),
    size: widths.optional().describe('of a square or rectangular flange, along X and Y before it is turned'),
    flats: size.optional().describe('across two flats, one on either side of the X axis before it is turned'),
    thickness: reading('length', { above: 0, most: 100 }),
  }).superRefine((flange, context) => {
    const round = (flange.shape ?? 'round') === 'round';
    const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
    if (round && flange.diameter === undefined) refuse('diameter', 'is missing; a round flange needs it');
    if (!round && flange.size === undefined) refuse('size', `is missing; a ${flange.shape} flange needs it`);
    if (!round && flange.diameter !== undefined) refuse('diameter', `does not belong to a ${flange.shape} flange`);
    if (round && flange.size !== undefined) refuse('size', 'does not belong to a round flange');
  }),
  holes: patternSection,
  thread: bare.optional(),
  joint: word(JOINTS, 'what the plate offers to the screws of the nut').optional(),
  seat: word(['outside', 'carriage'], 'the face of the plate on which the flange lies').optional(),
  stands: word(['through', 'away'], 'whether the body goes through the plate or stands away from it').optional(),
});

const carriageSection = map({
  bore: reading('length', { above: 0, most: 300 }, 'the hole that the nut or its body enters').optional(),
  slot: widths.optional().describe('the opening where it is a slot, along X and Y'),
  spigot: reading('length', { above: 0, most: 300 }, 'diameter of a raised ring around the bore').optional(),
  thickness: reading('length', { above: 0, most: 200 }).optional(),
  offset: point.optional().describe('from the axis of the screw to the middle of the pattern and the bore'),
  holes: patternSection,
  thread: bare.optional(),
  joint: word(JOINTS, 'what the plate offers to the screws of the carriage').optional(),
  room: z
    .array(point, 'must be a list of corners')
    .min(3, 'must have at least 3 corners')
    .max(100, 'must have at most 100 corners')
    .optional()
    .describe('corners of the room that the plate must stay in, around the axis of the screw'),
});

const cutoutSection = map({
  at: point,
  diameter: size.optional(),
  size: widths.optional(),
  turn: quantity('angle', { least: -360, most: 360 }).optional(),
}).superRefine((cutout, context) => {
  if ((cutout.diameter === undefined) === (cutout.size === undefined))
    context.addIssue({ code: 'custom', path: ['diameter'], message: 'give either diameter or size' });
});

const outlineSection = orShort(
  map({
    shape: word(['hull', 'round', 'square', 'rectangular', 'polygon']).optional(),
    rim: quantity('length', { least: 0.8, most: 50 }, 'plate left around every opening of a hull').optional(),
    diameter: size.optional(),
    width: size.optional().describe('of a square plate'),
    size: widths.optional().describe('of a rectangular plate'),
    corner: quantity('length', { least: 0, most: 100 }, 'corner radius').optional(),
    corners: z
      .array(point, 'must be a list of corners')
      .min(3, 'must have at least 3 corners')
      .max(100, 'must have at most 100 corners')
      .optional()
      .describe('of a free polygon, in order around it'),
    center: point.optional().describe('of a round, square or rectangular plate, from the axis of the screw'),
  }).superRefine((outline, context) => {
    const shape = outline.shape ?? 'hull';
    const refuse = (path: string, message: string) => context.addIssue({ code: 'custom', path: [path], message });
    if (shape === 'rectangular' && outline.size === undefined)
      refuse('size', 'is missing; a rectangular plate needs it');
    if (shape === 'polygon' && outline.corners === undefined) refuse('corners', 'is missing; a polygon needs them');
    const owners = { diameter: 'round', width: 'square', size: 'rectangular', corners: 'polygon' } as const;
    for (const key of ['diameter', 'width', 'size', 'corners'] as const) {
      if (outline[key] !== undefined && shape !== owners[key]) refuse(key, `does not belong to a ${shape} plate`);
    }
  }),
  (short) => ({ shape: short }),
  'string',
);

/** Sheet of a plate that joins a bought nut to a carriage. */
export const adapterSchema = map({
  part: z.literal('adapter', 'must be adapter'),
  name: partName,
  kind: word(['joined', 'floating', 'blank']).optional(),
  nut: nutSection.optional(),
  carriage: carriageSection,
  plate: map({
    thickness: quantity('length', { least: 1, most: 100 }).optional(),
    outline: outlineSection.optional(),
    flats: z
      .array(map({ angle: quantity('angle', { least: -360, most: 360 }), distance: size }), 'must be a list of flats')
      .max(12, 'must be at most 12 flats')
      .optional()
      .describe('straight cuts: their direction from the axis and their distance from it'),
    cutouts: z.array(cutoutSection, 'must be a list of cut-outs').max(12, 'must be at most 12').optional(),
    bore: size.optional().describe('finished; else worked out from the body of the nut'),
    step: map({ diameter: size, depth: size }).optional().describe('a wider part of the bore, on the outer face'),
    relief: quantity('length', { least: 0, most: 5 }, 'chamfer against the squashed first layer').optional(),
  }).optional(),
  register: map({
    nut: word(['bore', 'recess', 'none'], 'what keeps the nut in the middle of the plate').optional(),
    carriage: word(['rim', 'recess', 'none'], 'what keeps the plate in the middle of the carriage').optional(),
    depth: size.optional().describe('of recesses, and height of a rim'),
    clearance: quantity('length', { least: 0, most: 2 }, 'on the diameter').optional(),
  }).optional(),
  clocking: quantity('angle', { least: -360, most: 360 }, 'turn of the nut; else worked out').optional(),
  float: floatSection.optional().describe('of a floating nut; a length is the float sideways'),
  hold: word(['screws', 'keys'], 'what keeps a floating nut from turning').optional(),
  screw: screwSection.optional(),
  catch_nut: catchNutSection.optional(),
  calipers: calipersField,
  material: materialSection.optional(),
  printer: printerSection.optional(),
  duty: carriedDutySection.optional(),
  limits: limitsSection.optional(),
}).superRefine((sheet, context) => {
  const refuse = (path: string[], message: string) => context.addIssue({ code: 'custom', path, message });
  const kind = sheet.kind ?? 'joined';
  if (kind === 'blank' && sheet.nut !== undefined) refuse(['nut'], 'a blank plate takes no nut; use kind: joined');
  if (kind !== 'blank' && sheet.nut === undefined)
    refuse(['nut'], `is missing; a ${kind} plate needs the nut it carries`);
  if (kind === 'blank' && sheet.plate?.bore === undefined)
    refuse(['plate', 'bore'], 'is missing; a blank plate needs it');
  if (kind !== 'floating' && sheet.float !== undefined) refuse(['float'], 'belongs to kind: floating');
  if (kind !== 'floating' && sheet.hold !== undefined) refuse(['hold'], 'belongs to kind: floating');
  if (sheet.register?.carriage === 'rim' && sheet.carriage.bore === undefined)
    refuse(['register', 'carriage'], 'a rim needs carriage.bore to enter');
  if (sheet.register?.carriage === 'recess' && sheet.carriage.spigot === undefined)
    refuse(['register', 'carriage'], 'a recess needs carriage.spigot to take in');
  if (sheet.carriage.bore !== undefined && sheet.carriage.slot !== undefined)
    refuse(['carriage', 'slot'], 'give bore or slot, not both');
});
export type AdapterSheet = z.output<typeof adapterSchema>;
