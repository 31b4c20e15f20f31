import * as z from 'zod';
import { quantity } from '../fields.js';

/** A part's name becomes a folder, so it is plain on every disk. */
export const partName = z
  .string('must be text of letters, digits, - and _')
  .regex(/^[A-Za-z0-9_-]{1,64}$/, 'must be 1 to 64 letters, digits, - and _')
  .refine(
    (name) => !/^(con|prn|aux|nul|com\d|lpt\d)$/i.test(name),
    'is a reserved device name on some systems; choose another',
  )
  .describe('letters, digits, - and _; it becomes a folder');

/** A revision as a drawing tells it: `A`, `2`, `1.3`. */
export const revisionField = z
  .union([z.string(), z.number()], 'must be a few letters or digits')
  .transform(String)
  .refine((text) => /^[A-Za-z0-9.-]{1,8}$/.test(text), 'must be 1 to 8 letters, digits, points and hyphens')
  .describe('counted up whenever the part changes; it stands on the drawing');

/** Half-width of every reading of the sheet that states none of its own. */
export const calipersField = quantity(
  'length',
  { least: 0, most: 0.5 },
  'half-width of the uncertainty of a reading',
).optional();
