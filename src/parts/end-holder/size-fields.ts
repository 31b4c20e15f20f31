import { DERIVED, fieldFrom } from '../size-field.js';

/** The field of an end holder's sheet that a size shows. */
export const sizeField = fieldFrom({
  length: 'body.length',
  width: 'body.width',
  thickness: 'body.thickness',
  bore: 'bore',
  pocket_diameter: DERIVED,
  pocket_depth: DERIVED,
  hole_diameter: 'holes.diameter',
  hole_circle: 'holes.circle',
  holes_along_x: 'holes.rectangle',
  holes_along_y: 'holes.rectangle',
  cover_thickness: 'body.cover',
  cover_bore: DERIVED,
});
