import * as z from 'zod';
import { map, orShort } from '../fields.js';

const bound = z.union([z.number(), z.string()], 'must be a number or a quantity').optional();

/** Limits of checks that the sheet changes, by check id; a plain value replaces whichever bound the check has. */
export const limitsSection = z.record(
  z.string(),
  orShort(map({ min: bound, max: bound }), (short) => ({ min: short, max: short }), 'quantity'),
  {
    error: 'must be a map of check ids',
  },
);
export type LimitsSheet = z.output<typeof limitsSection>;
