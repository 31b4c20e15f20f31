import { SOLID_GROUP } from '../../judge/accept.js';
import { type Finding, hard, valued } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import type { Kernel } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../solid/mate.js';
import { sidesFor } from '../../solid/outline.js';
import { cylinder, type Shape } from '../../solid/recipe.js';
import { exactly } from '../../units/measured.js';
import { barIn, largestBar } from '../common/bar-mate.js';
import { carvedShapes } from '../common/carved.js';
import { mateFinding, threadMate } from '../common/thread-mate.js';
import type { CollarDesign } from './dimensions.js';
import { boreEnd, type CollarPlan, carvedCollar } from './plan.js';

const CHORD = 0.05;
const STANDS_OUT = 5;

/** Tries the largest shaft and the bearing's washer in the collar at finished sizes; of a threaded one the largest screw. */
export function mateCollar(design: CollarDesign, kernel: Kernel): Finding[] {
  const { finished, screw, fit } = design;
  const { thread } = finished;
  /**
   * Collar and what goes into it must not stand in each other.
   *
   *     V = greatest common volume of the collar with the largest shaft and with the washer
   *     V with a thread = greatest common volume of the largest screw and the smallest collar, pushed either way
   */
  const about = {
    id: 'solid-mate',
    group: SOLID_GROUP,
    question: 'prints',
    title: thread
      ? 'Common volume of the largest screw in the smallest collar'
      : 'Common volume of the collar, its shaft and its bearing',
    unit: 'mm³',
    source: 'derived: the solids themselves',
    limits: hard({ max: NO_COMMON_VOLUME }),
    moves: thread ? 'fit.diametral, fit.axial' : 'shaft, hold.bore_clearance, bearing',
  };
  if (thread && screw && fit) {
    const run = { thread: thread.tooth, lead: thread.lead, length: boreEnd(finished) };
    return [mateFinding(about, threadMate({ ...design, ...run, screw, fit }), kernel)];
  }
  const { base, cutters } = carvedShapes(carvedCollar(finished, CHORD));
  const collar: Shape = { kind: 'difference', of: [base, ...cutters] };
  const bar = barIn(finished.bore, largestBar(design.shaft, finished.bore), -STANDS_OUT, finished.length + STANDS_OUT);
  const volumes = [bar, ...washerIn(design, finished)].flatMap((other) => kernel.commonVolumes(collar, other, [{}]));
  return [
    finding(
      about,
      valued(
        exactly(Math.max(...volumes)),
        'at finished sizes, the shaft at its largest, as far as no slit opens for it; the washer on its seat',
      ),
    ),
  ];
}

/** The turning washer as a disc of the bearing's outside, on the face or in the lip. */
function washerIn({ bearing }: CollarDesign, plan: CollarPlan): Shape[] {
  if (!bearing) return [];
  const radius = bearing.outside / 2;
  const [from, to] = plan.lip ? [boreEnd(plan), plan.length + STANDS_OUT] : [-STANDS_OUT, 0];
  // touching faces have nothing in common
  return [cylinder({ radius, sides: sidesFor(radius, CHORD), circumscribed: false, from, to })];
}
