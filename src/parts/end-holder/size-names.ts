import { circleThrough } from '../common/drawn/hole-circle.js';
import { rectangleOf } from '../common/hole-pattern.js';
import type { Sizes } from '../part-kind.js';
import { grooveRadii, type HolderPlan, isLipped } from './plan.js';

/** Sizes of a holder by their names. */
export function namedSizes({ length, width, thickness, bore, pocket, holes, cover }: HolderPlan): Sizes {
  const rectangle = rectangleOf(holes);
  const radius = circleThrough(holes.centres);
  return {
    length,
    width,
    thickness,
    bore,
    ...(pocket ? { pocket_diameter: pocket.diameter, pocket_depth: pocket.depth, ...lipSizes(pocket) } : {}),
    hole_diameter: holes.diameter,
    ...(rectangle
      ? { holes_along_x: rectangle.along_x, holes_along_y: rectangle.along_y }
      : radius && holes.centres.length > 1
        ? { hole_circle: 2 * radius }
        : {}),
    ...(cover ? { cover_thickness: cover.thickness, cover_bore: cover.bore } : {}),
  };
}

function lipSizes(pocket: NonNullable<HolderPlan['pocket']>): Sizes {
  if (!isLipped(pocket)) return {};
  const [inner, outer] = grooveRadii(pocket);
  return { lip_diameter: pocket.lip.diameter, ring_diameter: 2 * inner, groove_diameter: 2 * outer };
}
