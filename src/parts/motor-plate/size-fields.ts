import { DERIVED, fieldFrom } from '../size-field.js';

/** The field of a motor plate's sheet that a size shows. */
export const sizeField = fieldFrom({
  length: 'plate.length',
  width: 'plate.width',
  thickness: 'plate.thickness',
  pilot_hole: DERIVED,
  motor_square: 'motor.square',
  motor_hole_diameter: DERIVED,
  head_pocket_diameter: DERIVED,
  head_pocket_depth: DERIVED,
  hole_diameter: 'machine.holes.diameter',
  hole_circle: 'machine.holes.circle',
  holes_along_x: 'machine.holes.rectangle',
  holes_along_y: 'machine.holes.rectangle',
  slot_length: DERIVED,
});
