import { holdsThread } from '../common/joints.js';
import { DERIVED, type FieldsOfSizes, fieldFrom } from '../size-field.js';
import type { NutDesign } from './dimensions.js';

const FIELDS: FieldsOfSizes = {
  thread_minor: DERIVED,
  thread_pitch_diameter: DERIVED,
  thread_major: DERIVED,
  groove_width: DERIVED,
  pitch: 'screw.pitch',
  bore: DERIVED,
  body_flats: 'body.flats',
  length: 'body.length',
  flange_width: 'flange.size',
  flange_flats: 'flange.flats',
  flange_thickness: 'flange.thickness',
  flange_offset: 'flange.offset',
  hole_circle: 'holes.circle',
  holes_along_x: 'holes.rectangle',
  holes_along_y: 'holes.rectangle',
  pocket_across_flats: DERIVED,
  pocket_depth: DERIVED,
  slit_width: DERIVED,
  slit_start: DERIVED,
  clamp_height: DERIVED,
  clamp_offset: DERIVED,
  pin_hole_diameter: 'family.pins.diameter',
  pin_height: DERIVED,
  pin_offset: DERIVED,
  threads_apart: 'family.apart',
  thread_length: DERIVED,
  thread_shift: 'family.shift',
  follower_length: 'family.follower',
  spring_length: 'family.spring.working',
  key_width: DERIVED,
  key_height: DERIVED,
  slot_width: DERIVED,
  slot_depth: DERIVED,
};

const OF_BODY = { round: 'body.diameter', square: 'body.across_flats', hexagon: 'body.across_flats' } as const;
const OF_FLANGE = {
  round: 'flange.diameter',
  square: 'flange.width',
  rectangular: 'flange.size',
  'two-ear': 'flange.size',
} as const;

/** The field of a nut's sheet that a size shows. */
export function sizeField(name: string, { finished: { body, flange }, holes }: NutDesign): string | undefined {
  if (name === 'body_diameter') return OF_BODY[body.shape];
  if (name === 'flange_diameter') return flange && OF_FLANGE[flange.shape];
  if (name === 'hole_diameter') return holes && holdsThread(holes.joint) ? DERIVED : 'holes.diameter';
  return fieldFrom(FIELDS)(name);
}
