import type { ShortForms } from '../../../src/sheet/edit-text.js';

/** What short forms of a sheet stand for when a field inside them is changed. */
export const SHORT: ShortForms = {
  fit: 'class',
  material: 'preset',
  printer: 'preset',
  screw: 'designation',
  outline: 'shape',
};
