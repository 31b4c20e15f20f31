import { DERIVED, type FieldsOfSizes, fieldFrom } from '../size-field.js';

/** Bores come out of the shaft and the clearance on it. */
const end = (which: '' | 'upper_'): FieldsOfSizes => ({
  [`${which}bore_diameter`]: DERIVED,
  [`${which}bore_across_flat`]: DERIVED,
  [`${which}bore_depth`]: DERIVED,
  [`${which}keyway_width`]: DERIVED,
  [`${which}keyway_depth`]: DERIVED,
  [`${which}clamp_height`]: DERIVED,
  [`${which}clamp_offset`]: DERIVED,
  [`${which}clamp_hole_diameter`]: DERIVED,
});

/** The field of a sleeve's sheet that a size shows. */
export const sizeField = fieldFrom({
  length: 'length',
  outside_diameter: 'outside_diameter',
  slit_width: DERIVED,
  ...end(''),
  ...end('upper_'),
});
