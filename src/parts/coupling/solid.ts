import { outlineBounds } from '../../solid/convex.js';
import { carvedArea, carvedBreaks, carvedShapes, clampVolume, outlineAt } from '../common/carved.js';
import { sectionVolume } from '../common/section-volume.js';
import type { PlannedBody } from '../part-kind.js';
import type { CouplingDesign, Hub } from './dimensions.js';
import { carvedHub } from './hub-plan.js';
import { jawArea, jawCutters, slotLevels } from './jaws.js';
import { spiderOutline, spiderShape, spiderVolume } from './spider.js';

/** Hubs and insert, each lying as it is printed. */
export function couplingBodies(design: CouplingDesign): PlannedBody[] {
  return [...design.hubs.map((hub) => hubBody(hub, design)), insertBody(design)];
}

function hubBody({ name, printed }: Hub, { printer, material }: CouplingDesign): PlannedBody {
  const carved = carvedHub(printed, printer.chordError);
  const { base, cutters } = carvedShapes(carved);
  const { length, jaws } = printed;
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
    expected: {
      volume: sectionVolume(areaAt, breaks) - clampVolume(carved),
      mark: 0,
      bounds: [
        [min[0], min[1], bottom],
        [max[0], max[1], top],
      ],
    },
  };
}

function insertBody({ insert }: CouplingDesign): PlannedBody {
  const { printed, printer, material } = insert;
  const { min, max } = outlineBounds(spiderOutline(printed, printer.chordError));
  return {
    recipe: { name: 'insert', material: material.name, shape: spiderShape(printed, printer.chordError) },
    expected: {
      volume: spiderVolume(printed, printer.chordError),
      mark: 0,
      bounds: [
        [min[0], min[1], 0],
        [max[0], max[1], printed.height],
      ],
    },
  };
}
