import { clipped, outlineBounds } from '../../solid/convex.js';
import type { Shape } from '../../solid/recipe.js';
import { type BoreShape, boreSection, boreVolumeIn } from '../common/bore-section.js';
import { box, carvedArea, carvedBreaks, carvedShapes, clampVolume } from '../common/carved.js';
import { commonArea, sectionVolume } from '../common/section-volume.js';
import { halfWidthAt, roofedOutline } from '../common/side-hole.js';
import { threadBore } from '../common/thread-bore.js';
import { threadColumns } from '../common/thread-shape.js';
import { lessChords } from '../common/wall-in-file.js';
import { thinnest } from '../common/walls.js';
import type { PlannedBody } from '../part-kind.js';
import type { SizeChoice } from '../part-views.js';
import type { CollarDesign } from './dimensions.js';
import { boreEnd, type CollarPlan, carvedCollar } from './plan.js';
import { collarWalls } from './walls.js';

const FAR = 200;

/** The collar as a recipe, and what it must measure. */
export function collarBody(design: CollarDesign, sizes: SizeChoice = 'printed'): PlannedBody {
  const { name, material, printer } = design;
  const plan = design[sizes];
  const carved = carvedCollar(plan, printer.chordError);
  const { base, cutters } = carvedShapes(carved);
  const bore = threadedBore(design, plan);
  const thread = bore && threadBore(bore);
  const { min, max } = outlineBounds(carved.outline);
  // the slit runs through and takes the corner on +X
  const beside = outlineBounds(clipped(carved.outline, [0, -1, -plan.slit / 2]));
  return {
    recipe: {
      name,
      material: material.name,
      shape: { kind: 'difference', of: [base, ...cutters, ...(thread ? [thread.shape] : [])] } satisfies Shape,
    },
    expected: () => ({
      volume:
        sectionVolume(carvedArea(carved), carvedBreaks(carved)) -
        clampVolume(carved) -
        (bore && thread ? thread.volume - besideThread(bore, plan) : 0),
      mark: 0,
      bounds: [
        [min[0], min[1], 0],
        [beside.max[0], max[1], plan.length],
      ],
    }),
    printer,
    leastWall: lessChords(thinnest(collarWalls(plan)), printer.chordError),
  };
}

function threadedBore({ screw, printer }: CollarDesign, plan: CollarPlan): BoreShape | undefined {
  const { thread } = plan;
  if (!thread || !screw) return undefined;
  return {
    thread: thread.tooth,
    starts: screw.starts,
    hand: screw.hand,
    columns: threadColumns(thread.tooth, thread.lead, printer.chordError),
    leadIn: thread.leadIn,
    bottom: 0,
    top: boreEnd(plan),
  };
}

/** What slit and pin hole take of the threaded bore's own air: counted with them, and with the thread again [mm³]. */
function besideThread(bore: BoreShape, plan: CollarPlan): number {
  const strip = box([0, FAR], [-plan.slit / 2, plan.slit / 2]);
  const slit = boreVolumeIn(bore, strip, bore.bottom, bore.top);
  if (!plan.pin) return slit;
  const { hole, height } = plan.pin;
  const outline = roofedOutline(hole / 2);
  const section = boreSection(bore);
  const areaAt = (z: number) => {
    const half = halfWidthAt(outline, z - height);
    return half > 0 ? commonArea(section(z), box([-half, half], [-FAR, FAR])) : 0;
  };
  return (
    slit +
    sectionVolume(
      areaAt,
      outline.map(([, up]) => height + up),
      4,
    )
  );
}
