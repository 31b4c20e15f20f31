import { DERIVED, fieldFrom } from '../size-field.js';

/** The field of a gauge's sheet that a size shows. */
export const sizeField = fieldFrom({
  outside_diameter: 'outside_diameter',
  length: DERIVED,
  two_turns_length: DERIVED,
  ten_turns_length: DERIVED,
  thread_major: DERIVED,
  thread_pitch_diameter: DERIVED,
  thread_minor: DERIVED,
  pitch: DERIVED,
  groove_width: DERIVED,
});
