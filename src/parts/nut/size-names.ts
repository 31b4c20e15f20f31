import { type HolePlaces, rectangleOf } from '../common/hole-pattern.js';
import type { Sizes } from '../part-kind.js';
import type { Flange, NutSizes } from './nut-sizes.js';

/** Sizes under the names of the report. */
export function sizeNames(sizes: NutSizes): Sizes {
  const { thread, body, flange, holes } = sizes;
  return {
    thread_major: thread.major,
    thread_pitch_diameter: thread.pitchDiameter,
    thread_minor: thread.minor,
    groove_width: thread.grooveWidth,
    pitch: thread.pitch,
    lead: sizes.lead,
    body_diameter: body.across,
    ...(body.flats === undefined ? {} : { body_flats: body.flats }),
    length: sizes.length,
    ...(flange ? flangeNames(flange) : {}),
    ...(holes
      ? {
          hole_diameter: holes.diameter,
          hole_circle: 2 * Math.hypot(...holes.centres[0]!),
          ...holeDistances(holes),
        }
      : {}),
  };
}

function holeDistances(places: HolePlaces): Sizes {
  const rectangle = rectangleOf(places);
  return rectangle ? { holes_along_x: rectangle.along_x, holes_along_y: rectangle.along_y } : {};
}

function flangeNames(flange: Flange): Sizes {
  const sizes = flange.shape === 'round' || flange.shape === 'square' ? {} : { flange_width: flange.size[1] };
  return {
    flange_diameter: flange.size[0],
    ...sizes,
    flange_thickness: flange.thickness,
    ...(flange.offset > 0 ? { flange_offset: flange.offset } : {}),
    ...(flange.flats === undefined ? {} : { flange_flats: flange.flats }),
  };
}
