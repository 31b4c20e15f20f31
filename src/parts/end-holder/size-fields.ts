import { DERIVED, fieldFrom } from '../size-field.js';
import type { EndHolderDesign } from './dimensions.js';

const FIELDS = fieldFrom({
  length: 'body.length',
  width: 'body.width',
  thickness: 'body.thickness',
  pocket_diameter: DERIVED,
  pocket_depth: DERIVED,
  lip_diameter: 'fit.lip',
  ring_diameter: DERIVED,
  groove_diameter: DERIVED,
  hole_diameter: 'holes.diameter',
  hole_circle: 'holes.circle',
  holes_along_x: 'holes.rectangle',
  holes_along_y: 'holes.rectangle',
  cover_thickness: 'body.cover',
  cover_bore: DERIVED,
});

/** The field of an end holder's sheet that a size shows; the bore behind a bearing is its shoulder, or what a flanged one sits in. */
export function sizeField(name: string, { bearing }: EndHolderDesign): string | undefined {
  if (name !== 'bore') return FIELDS(name);
  if (!bearing) return 'bore';
  return bearing.flange ? DERIVED : 'fit.shoulder';
}
