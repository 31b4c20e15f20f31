import { DERIVED, fieldFrom } from '../size-field.js';

/** The field of an adapter's sheet that a size shows. */
export const sizeField = fieldFrom({
  thickness: 'plate.thickness',
  height_change: DERIVED,
  outline_length: DERIVED,
  outline_width: DERIVED,
  bore: 'plate.bore',
  recess_diameter: 'plate.step.diameter',
  recess_depth: 'register.depth',
  carriage_recess_diameter: DERIVED,
  carriage_recess_depth: 'register.depth',
  rim_diameter: DERIVED,
  rim_height: 'register.depth',
  nut_hole_diameter: 'nut.holes.diameter',
  nut_hole_circle: 'nut.holes.circle',
  nut_holes_along_x: 'nut.holes.rectangle',
  nut_holes_along_y: 'nut.holes.rectangle',
  carriage_hole_diameter: 'carriage.holes.diameter',
  carriage_hole_circle: 'carriage.holes.circle',
  carriage_holes_along_x: 'carriage.holes.rectangle',
  carriage_holes_along_y: 'carriage.holes.rectangle',
});
