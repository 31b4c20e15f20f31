import type { ThreadStep } from '../../calibrate/feature.js';
import { nutThread, type ToothForm } from '../../mechanics/thread/nut-thread.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { circleOutline } from '../../solid/outline.js';
import { threadBore } from '../common/thread-bore.js';
import { threadInFile } from '../common/thread-in-file.js';
import { threadColumns } from '../common/thread-shape.js';
import type { CouponDesign } from './dimensions.js';
import { shortNutLength } from './short-nut-length.js';
import type { Station } from './strip.js';

/** A coupon with short nuts. */
export type ThreadedCoupon = CouponDesign & { readonly screw: Screw };

/** Chamfer past the thread at both ends, mm. */
const LEAD_IN = 0.4;
/** Thread of a short nut as it should come out. */
function shortNut({ screw }: ThreadedCoupon, { diametral, axial }: ThreadStep): ToothForm {
  return nutThread({
    form: screw.form,
    flankAngle: screw.flankAngle,
    screwMajor: screw.major.likely,
    screwPitchDiameter: screw.pitchDiameter.likely,
    pitch: screw.pitch.likely,
    diametralClearance: diametral,
    axialClearance: axial,
  });
}

/** The same as it stands in the file. */
function shortNutInFile(design: ThreadedCoupon, step: ThreadStep): ToothForm {
  return threadInFile(shortNut(design, step), design.screw.lead, design);
}

/** A short nut as a station: a ring with the thread and its chamfers. */
export function threadStation(design: ThreadedCoupon, step: ThreadStep, wall: number): Station {
  const { screw, printer } = design;
  const thread = shortNutInFile(design, step);
  const columns = threadColumns(thread, screw.lead, printer.chordError);
  const height = shortNutLength(thread.pitch);
  const half = thread.major / 2 + wall;
  const { starts, hand } = screw;
  const bore = threadBore({ thread, starts, hand, columns, leadIn: LEAD_IN, bottom: 0, top: height });
  return {
    mark: step.mark,
    half,
    column: (center) => ({
      outline: circleOutline({ radius: half, sides: columns, center }),
      height,
      wall,
      opening: { kind: 'thread', center, minor: thread.minor, major: thread.major },
      cut: { ...bore, shape: { kind: 'moved', shape: bore.shape, by: [center[0], center[1], 0] } },
    }),
  };
}
