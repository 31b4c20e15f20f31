import * as z from 'zod';
import { map, orShort, quantity, whole } from '../sheet/fields.js';
import { partName } from '../sheet/sections/common.js';

const fields = z.record(z.string(), z.unknown(), { error: 'must be a map of fields' });
const over = fields.optional().describe('fields that replace those of the sheet; null takes one out');
/** `screw.major`: a field of a part sheet; names of parts hold no points */
const fieldPath = z
  .string('must be a field such as screw.major')
  .max(200, 'is too long')
  .regex(/^[a-z_]\w*(?:\.[a-z_]\w*){1,7}$/, 'must be a field such as screw.major');
const named = <T extends z.ZodType>(schema: T) => z.record(z.string(), schema, { error: 'must be a map of names' });

const partEntry = map({
  sheet: z.string('must be the path of a part sheet').min(1, 'must not be empty').max(1000).optional(),
  part: fields.optional().describe('a part sheet written here, in place of sheet'),
  with: over,
  quantity: whole(0, 10_000, 'of one machine; 0 leaves the part out').optional(),
  spare: whole(0, 1000, 'pieces to keep on the shelf, printed besides').optional(),
  needs: z
    .array(fieldPath, 'must be a list of fields')
    .max(100)
    .optional()
    .describe('fields that must be measured at each machine, such as screw.major'),
  axis: partName.optional().describe('nuts and couplings of one axis are compared with each other'),
  accept: named(z.string('must be a reason'))
    .optional()
    .describe('failed checks that are accepted for this part, each with its reason'),
});

const motorFields = orShort(
  map({
    preset: z.string('must be the name of a preset').optional().describe('a motor frame that ships, for its shaft'),
    shaft: quantity('length', { above: 0, most: 100 }, 'diameter of the motor shaft').optional(),
  }),
  (short) => ({ preset: short }),
  'string',
);

const kindEntry = map({
  needs: z
    .array(partName.or(fieldPath), 'must be a list of names and fields')
    .max(100)
    .optional()
    .describe('what every machine of this kind must have: parts by their names, readings by their fields'),
  motor: motorFields.optional(),
  with: over,
  parts: named(partEntry).optional().describe('what every machine of this kind gets'),
});

const machineEntry = map({
  kind: z.string('must be the name of a kind').optional(),
  group: z.string('must be the name of a group').optional(),
  motor: motorFields.optional(),
  with: over,
  parts: named(partEntry).optional(),
});

/** Sheet of a fleet. */
export const fleetSchema = map({
  fleet: partName,
  defaults: fields.optional().describe('fields for every part whose sheet does not give them'),
  profiles: named(map({ material: z.unknown().optional(), printer: z.unknown().optional() }))
    .optional()
    .describe('material and printer by name, for profile: NAME'),
  kinds: named(kindEntry).optional(),
  groups: named(map({ with: over })).optional(),
  machines: named(machineEntry).optional(),
  rows: z
    .string('must be the path of a CSV or TSV file')
    .min(1, 'must not be empty')
    .max(1000)
    .optional()
    .describe('machines and their parts as rows of a spreadsheet'),
});

export type FleetSheet = z.output<typeof fleetSchema>;
export type PartEntry = z.output<typeof partEntry>;
export type MachineEntry = z.output<typeof machineEntry>;
