import { screwBar } from '../common/drawn/screw-bar.js';
import { shaftBar } from '../common/drawn/shaft-bar.js';
import { noted, notedReading, notedSize, spreadOf } from '../common/drawn/spread.js';
import { threadDetail } from '../common/drawn/thread-detail.js';
import type { Companion, HoleRow, PartViews, SizeChoice } from '../part-views.js';
import type { CollarDesign } from './dimensions.js';
import { collarBodies } from './solid.js';
import { acrossView } from './views/across.js';
import { endView } from './views/end.js';
import type { CollarInSight } from './views/in-sight.js';
import { clampPlaces } from './views/places.js';
import { sideView } from './views/side.js';

/** How far a shaft stands out of the collar in a picture, in its diameters. */
const BEYOND = 1.5;

/** What a drawing and the page show of a collar: a section through its slit, its end, its thread, and what it holds. */
export function collarViews(design: CollarDesign, choice: SizeChoice): PartViews {
  const plan = design[choice];
  const shapes = collarBodies(design, choice).map(({ recipe }) => recipe.shape);
  const collar: CollarInSight = {
    design,
    choice,
    shapes,
    plan,
    radius: plan.outside / 2,
    spread: spreadOf(design, choice),
  };
  const { thread } = plan;
  const away = plan.outside / 2;
  const further = [
    ...(plan.halves ? [acrossView(collar)] : []),
    ...(thread ? [threadDetail({ sizes: { thread: thread.tooth }, spread: collar.spread })] : []),
  ];
  return {
    side: sideView(collar),
    end: endView(collar),
    ...(further.length > 0 ? { further } : {}),
    holes: holeRows(collar),
    notes: notesOf(collar),
    material: design.material.name,
    companions: [held(design)],
    cutTowards: plan.halves ? 90 : 0,
    ...(plan.halves ? { apart: { a: [0, away, 0] as const, b: [0, -away, 0] as const } } : {}),
  };
}

function holeRows({ plan: { bore, thread, clamp, pin, lip, length, halves } }: CollarInSight): HoleRow[] {
  const { hole, screw, screwLength } = clamp;
  return [
    ...(thread ? [] : [{ label: 'B', at: [0, 0] as const, diameter: bore.diameter, note: 'through' }]),
    ...clampPlaces(clamp, halves).map(({ label, x, height }) => ({
      label,
      at: [x, 0] as const,
      height,
      diameter: hole,
      note: `${screw}x${screwLength}`,
    })),
    ...(pin
      ? [{ label: 'P', at: [0, 0] as const, height: pin.height, diameter: pin.hole, note: 'pin, across the axis' }]
      : []),
    ...(lip
      ? [
          {
            label: 'L',
            at: [0, 0] as const,
            height: length,
            diameter: lip.diameter,
            note: `${noted(lip.depth)} deep`,
          },
        ]
      : []),
  ];
}

function notesOf({ design: { shaft, screw, fit, bearing }, plan, spread }: CollarInSight): string[] {
  const { chamfer, clamp, thread } = plan;
  const wide = (size: number) => notedSize(size, spread(size, 'inside'));
  const off = (size: number) => notedSize(size, spread(size, 'outside'));
  const { screw: size, washers, head, headSeat, nut, nutSeat } = clamp;
  return [
    thread && screw && fit
      ? `Thread for ${screw.designation ?? 'the screw'}, opened by ${noted(fit.diametral, 3)} on the diameter and ${noted(fit.axial, 3)} along the axis`
      : `For ⌀${notedReading(shaft.diameter)}`,
    ...(bearing
      ? [
          `Thrust bearing ${noted(bearing.bore)} × ${noted(bearing.outside)} × ${noted(bearing.height)} ${bearing.centredBy === 'lip' ? 'in the lip' : 'on the face at z 0, which lies on the bed'}`,
        ]
      : []),
    `${size} across the slit, head${washers ? ' on a washer' : ''} ⌀${wide(head)} from y −${off(headSeat)}, nut ${washers ? `on a washer ⌀${wide(nut)}` : `${wide(nut)} across flats`} from y ${off(nutSeat)}`,
    `Edges and mouths broken ${noted(chamfer)} × 45°`,
  ];
}

/** The screw in its thread, or the shaft in its bore. */
function held({ shaft, screw, printed, printer }: CollarDesign): Companion {
  const beyond = BEYOND * shaft.diameter.likely;
  const [from, to] = [-beyond, printed.length + beyond];
  if (!screw || !(printed.thread || shaft.crests)) return shaftBar('shaft', shaft, from, to);
  const pitch = printed.thread?.tooth.pitch;
  return screwBar(screw, { from, to, chordError: printer.chordError, ...(pitch === undefined ? {} : { pitch }) });
}
