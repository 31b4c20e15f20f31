import { clipped, outlineBounds } from '../../solid/convex.js';
import { carvedArea, carvedBreaks, carvedShapes, clampVolume } from '../common/carved.js';
import { sectionVolume } from '../common/section-volume.js';
import { lessChords } from '../common/wall-in-file.js';
import type { PlannedBody } from '../part-kind.js';
import type { SizeChoice } from '../part-views.js';
import type { SleeveDesign } from './dimensions.js';
import { leastSleeveWall } from './least-wall.js';
import { carvedSleeve } from './plan.js';

/** The sleeve as a recipe, and what it must measure. */
export function sleeveBody(design: SleeveDesign, sizes: SizeChoice = 'printed'): PlannedBody {
  const { name, material, printer } = design;
  const plan = design[sizes];
  const carved = carvedSleeve(plan, printer.chordError);
  const { base, cutters } = carvedShapes(carved);
  const { min, max } = outlineBounds(carved.outline);
  // the slit runs through and takes the corner on +X
  const beside = outlineBounds(clipped(carved.outline, [0, -1, -plan.slit / 2]));
  return {
    recipe: { name, material: material.name, shape: { kind: 'difference', of: [base, ...cutters] } },
    expected: () => ({
      volume: sectionVolume(carvedArea(carved), carvedBreaks(carved)) - clampVolume(carved),
      mark: 0,
      bounds: [
        [min[0], min[1], 0],
        [beside.max[0], max[1], plan.length],
      ],
    }),
    printer,
    leastWall: lessChords(leastSleeveWall(plan), printer.chordError),
  };
}
