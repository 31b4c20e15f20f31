import { DERIVED, type FieldsOfSizes, fieldFrom } from '../size-field.js';

/** Bores come out of the shaft and the clearance on it. */
const hub = (name: 'motor_hub' | 'screw_hub'): FieldsOfSizes => ({
  [`${name}.outside_diameter`]: 'hubs.outside_diameter',
  [`${name}.length`]: `${name}.length`,
  [`${name}.bore_diameter`]: DERIVED,
  [`${name}.bore_across_flat`]: DERIVED,
  [`${name}.bore_stop`]: DERIVED,
  [`${name}.keyway_width`]: DERIVED,
  [`${name}.keyway_depth`]: DERIVED,
  [`${name}.slit_width`]: DERIVED,
  [`${name}.slit_length`]: DERIVED,
  [`${name}.clamp_offset`]: DERIVED,
  [`${name}.jaw_height`]: 'jaws.height',
  [`${name}.jaw_width`]: 'jaws.width',
  [`${name}.jaw_inner_diameter`]: 'jaws.inner',
});

/** The field of a coupling's sheet that a size shows. */
export const sizeField = fieldFrom({
  ...hub('motor_hub'),
  ...hub('screw_hub'),
  'insert.height': 'insert.height',
  'insert.hole_diameter': 'insert.hole',
  'insert.lobe_width': DERIVED,
  'insert.outside_diameter': DERIVED,
  'insert.ring_diameter': DERIVED,
});
