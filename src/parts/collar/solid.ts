import { clipped, outlineBounds } from '../../solid/convex.js';
import type { Outline } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { type BoreShape, boreSection, boreShareIn, boreVolumeIn } from '../common/bore-section.js';
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

/** The collar, or its halves on either side of the plane y = 0, as recipes, and what they must measure. */
export function collarBodies(design: CollarDesign, sizes: SizeChoice = 'printed'): PlannedBody[] {
  const { name, material, printer } = design;
  const plan = design[sizes];
  const carved = carvedCollar(plan, printer.chordError);
  const { base, cutters } = carvedShapes(carved);
  const bore = threadedBore(design, plan);
  const thread = bore && threadBore(bore);
  const shape: Shape = { kind: 'difference', of: [base, ...cutters, ...(thread ? [thread.shape] : [])] };
  const { min, max } = outlineBounds(carved.outline);
  // the slit runs through and takes the corner on +X, of halves that on −X too
  const beside = outlineBounds(clipped(carved.outline, [0, -1, -plan.slit / 2]));
  const volume = () => sectionVolume(carvedArea(carved), carvedBreaks(carved)) - clampVolume(carved);
  const threaded = (side?: Outline) => {
    if (!bore || !thread) return 0;
    const beside = besideThread(bore, plan);
    return side ? thread.volume * boreShareIn(bore, side) - beside / 2 : thread.volume - beside;
  };
  const of = { printer, leastWall: lessChords(thinnest(collarWalls(plan)), printer.chordError) };
  if (!plan.halves)
    return [
      {
        ...of,
        recipe: { name, material: material.name, shape },
        expected: () => ({
          volume: volume() - threaded(),
          mark: 0,
          bounds: [
            [min[0], min[1], 0],
            [beside.max[0], max[1], plan.length],
          ],
        }),
      },
    ];
  return (['a', 'b'] as const).map((half): PlannedBody => {
    const across = (near: number, far: number): [number, number] => (half === 'a' ? [near, far] : [-far, -near]);
    const side = box([-FAR, FAR], across(0, FAR));
    const [near, far] = across(plan.slit / 2, max[1]);
    return {
      ...of,
      recipe: {
        name: half,
        material: material.name,
        shape: { kind: 'intersection', of: [shape, { kind: 'prism', outlines: [side], from: -FAR, to: FAR }] },
      },
      // but for its thread the collar is the same when it is turned half round
      expected: () => ({
        volume: volume() / 2 - threaded(side),
        mark: 0,
        bounds: [
          [-beside.max[0], near, 0],
          [beside.max[0], far, plan.length],
        ],
      }),
    };
  });
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
  const strip = box([plan.halves ? -FAR : 0, FAR], [-plan.slit / 2, plan.slit / 2]);
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
