import type { HeldView } from '../common/held.js';
import type { CollarDesign } from './dimensions.js';
import { boreEnd } from './plan.js';
import { ownWalls } from './walls.js';

/** A collar is not turned against its shaft: nothing is asked of its torque. */
const NO_TORQUE = { working: 0, words: 'no torque', motor: 0, falls: false };

/** Length over which the shaft fills its collar: what its told length leaves behind the bearing. */
export function engagedIn({ finished, shaft, bearing }: CollarDesign): number {
  return Math.min(boreEnd(finished), (shaft.length ?? Infinity) - (bearing?.height ?? 0));
}

/** The shaft in its collar. */
export function heldIn(design: CollarDesign): HeldView {
  const { finished, shaft, grip, clearance, temperature, material, printer, retighten } = design;
  const { outside, bore, clamp, slit, halves, length } = finished;
  const held = {
    name: 'collar',
    section: 'hold',
    shaft,
    grip,
    clearance,
    engagement: engagedIn(design),
    outside,
    bore,
    slit: { width: slit, length, web: false, ...(halves ? { through: true as const } : {}) },
    clamp,
    more: ownWalls(finished),
    temperature,
  };
  return {
    held: [held],
    demand: NO_TORQUE,
    retighten,
    reversing: true,
    material,
    printer,
    ...(finished.thread ? { closer: 'a closer fit' } : {}),
  };
}
