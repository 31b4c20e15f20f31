import { DERIVED, fieldFrom } from '../size-field.js';

/** The field of a collar's sheet that a size shows. */
export const sizeField = fieldFrom({
  outside_diameter: 'outside_diameter',
  length: 'length',
  slit_width: DERIVED,
  bore_diameter: DERIVED,
  bore_across_flat: DERIVED,
  clamp_height: DERIVED,
  clamp_offset: DERIVED,
  clamp_hole_diameter: DERIVED,
  lip_diameter: DERIVED,
  lip_depth: DERIVED,
  pin_hole_diameter: 'pin',
  pin_height: DERIVED,
  thread_major: DERIVED,
  thread_pitch_diameter: DERIVED,
  thread_minor: DERIVED,
  pitch: DERIVED,
  groove_width: DERIVED,
});
