import { rounded } from '../../units/format.js';
import { type HolePlaces, rectangleOf } from '../common/hole-pattern.js';
import { boreOf } from '../common/joints.js';
import type { PrintSizes } from '../common/print-sizes.js';
import type { Sizes } from '../part-kind.js';
import type { Layout } from './layout.js';
import { type PlateSizes, plateOutline } from './plan.js';

/** Sizes under the names of the report. */
export function named({ plate, clocking, ligament }: Layout, seatHeight: number, print: PrintSizes): Sizes {
  const { nutHoles, carriageHoles, outerStep, innerStep, rim } = plate;
  const [length, width] = extent(plate, print);
  return {
    thickness: print.along(plate.thickness),
    bore: print.inside(plate.bore),
    outline_length: length,
    outline_width: width,
    clocking: clocking.turn,
    least_ligament: rounded(ligament.gap),
    height_change: print.along(seatHeight),
    ...(outerStep
      ? { recess_diameter: print.inside(outerStep.diameter), recess_depth: print.along(outerStep.depth) }
      : {}),
    ...(innerStep
      ? {
          carriage_recess_diameter: print.inside(innerStep.diameter),
          carriage_recess_depth: print.along(innerStep.depth),
        }
      : {}),
    ...(rim ? { rim_diameter: print.outside(rim.outer), rim_height: print.along(rim.height) } : {}),
    ...(nutHoles
      ? {
          nut_hole_diameter: print.inside(boreOf(nutHoles.hole)),
          nut_hole_circle: print.across(2 * Math.hypot(...nutHoles.centres[0]!)),
          ...distances('nut', nutHoles, print),
        }
      : {}),
    carriage_hole_diameter: print.inside(boreOf(carriageHoles.hole)),
    carriage_hole_circle: print.across(2 * Math.hypot(...carriageHoles.centres[0]!)),
    ...distances('carriage', carriageHoles, print),
  };
}

/** Of a rectangle whose sides lie along the axes. */
function distances(name: string, places: HolePlaces, print: PrintSizes): Record<string, number> {
  const rectangle = rectangleOf(places);
  if (!rectangle) return {};
  return {
    [`${name}_holes_along_x`]: print.across(rectangle.along_x),
    [`${name}_holes_along_y`]: print.across(rectangle.along_y),
  };
}

function extent(plate: PlateSizes, print: PrintSizes): readonly [number, number] {
  const corners = plateOutline(plate, print, 0.01);
  const over = (axis: 0 | 1) => {
    const values = corners.map((corner) => corner[axis]);
    return Math.max(...values) - Math.min(...values);
  };
  return [over(0), over(1)];
}
