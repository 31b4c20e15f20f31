import * as z from 'zod';

/** A part's name becomes a folder, so it is plain on every disk. */
export const partName = z
  .string('must be text of letters, digits, - and _')
  .regex(/^[A-Za-z0-9_-]{1,64}$/, 'must be 1 to 64 letters, digits, - and _')
  .refine(
    (name) => !/^(con|prn|aux|nul|com\d|lpt\d)$/i.test(name),
    'is a reserved device name on some systems; choose another',
  )
  .describe('letters, digits, - and _; it becomes a folder');
