import { outlineBounds } from '../../solid/convex.js';
import { carvedArea, carvedBreaks, carvedShapes, clampVolume, outlineAt } from '../common/carved.js';
import { sectionVolume } from '../common/section-volume.js';
import { lessChords } from '../common/wall-in-file.js';
import type { PlannedBody } from '../part-kind.js';
import type { SizeChoice } from '../part-views.js';
import type { CouplingDesign, Hub } from './dimensions.js';
import { carvedHub } from './hub-plan.js';
import { insertOutline, insertShape, insertVolume } from './insert.js';
import { jawArea, jawCutters, slotLevels } from './jaws.js';
import { leastHubWall, leastInsertWall } from './least-wall.js';

/** Hubs and insert, each lying as it is printed. */
export function couplingBodies(design: CouplingDesign, sizes: SizeChoice = 'printed'): PlannedBody[] {
  return [...design.hubs.map((hub) => hubBody(hub, design, sizes)), insertBody(design, sizes)];
}

function hubBody(hub: Hub, { printer, material }: CouplingDesign, sizes: SizeChoice): PlannedBody {
  const { name } = hub;
  const plan = hub[sizes];
  const carved = carvedHub(plan, printer.chordError);
  const { base, cutters } = carvedShapes(carved);
  const { length, jaws } = plan;
  const [bottom, top] = [0, length + jaws.height];
  const core = length - jaws.recess;
  const [below, above] = [carvedArea(carved), jawArea(jaws, printer.chordError)];
  const areaAt = (z: number) => (z < core ? below(z) : above(outlineAt(carved.outline, carved.levels, z), z - length));
  const breaks = [...carvedBreaks(carved), core, length, ...slotLevels(jaws).map(([z]) => Math.min(top, length + z))];
  const { min, max } = outlineBounds(carved.outline);
  return {
    recipe: {
      name,
      material: material.name,
      shape: { kind: 'difference', of: [base, ...jawCutters(jaws, length, printer.chordError), ...cutters] },
    },
    expected: () => ({
      volume: sectionVolume(areaAt, breaks) - clampVolume(carved),
      mark: 0,
      bounds: [
        [min[0], min[1], bottom],
        [max[0], max[1], top],
      ],
    }),
    printer,
    leastWall: lessChords(leastHubWall(plan), printer.chordError),
  };
}

function insertBody({ insert }: CouplingDesign, sizes: SizeChoice): PlannedBody {
  const { printer, material } = insert;
  const plan = insert[sizes];
  const { min, max } = outlineBounds(insertOutline(plan, printer.chordError));
  return {
    recipe: { name: 'insert', material: material.name, shape: insertShape(plan, printer.chordError) },
    expected: () => ({
      volume: insertVolume(plan, printer.chordError),
      mark: 0,
      bounds: [
        [min[0], min[1], 0],
        [max[0], max[1], plan.height],
      ],
    }),
    printer,
    leastWall: lessChords(leastInsertWall(plan), printer.chordError),
  };
}
