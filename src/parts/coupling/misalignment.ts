import { insertGive } from '../../mechanics/coupling/hard-insert.js';
import { offsetAtHeight } from '../common/carved.js';
import { COUPLING_ANGLE } from '../common/motor-figures.js';
import type { CouplingDesign } from './dimensions.js';
import { slotLevels } from './jaws.js';

/** Angular and parallel misalignment that jaw couplings are built for. @source common-practice */
const MOST = { angular: COUPLING_ANGLE.flexible, parallel: 0.38, parallelShare: 0.01 };

/** How far a lobe may be squeezed for good, as a share of its width. @source common-practice */
export const MOST_SQUEEZE = 0.15;

/**
 * Squeeze of a lobe at its flank at the stated misalignment: what is built in, half the parallel offset, what the lean
 * of half the angle adds at the ends of the insert, and what the fillet takes of an edge that is pushed down on it [mm].
 */
export function squeezeAt(design: CouplingDesign): number {
  const { insert, misalignment } = design;
  const { height, reach, middle, barrel } = insert.finished;
  const lean = leanOf(misalignment);
  const aside = misalignment.parallel / 2 + lean * (height / 2 + lean * reach);
  // a barrelled lobe that is pushed along its own middle line meets a flank that closes on it
  const pushed = aside * Math.hypot(1, (2 * barrel) / (reach - middle));
  return Math.max(0, -insert.flankClearance) + pushed + filletBite(design);
}

/** How far the fillet at the foot of a jaw stands out where the lowest edge of a misaligned lobe comes to lie [mm]. */
function filletBite({ insert, jaws, gap, misalignment }: CouplingDesign): number {
  const { height, reach } = insert.finished;
  const lowest = (gap - height) / 2 - misalignment.axial / 2 - leanOf(misalignment) * reach;
  return Math.max(0, -offsetAtHeight(slotLevels(jaws), Math.max(0, lowest)));
}

/** Of the insert, which takes half the angle. */
function leanOf({ angular }: CouplingDesign['misalignment']): number {
  return Math.tan(((angular / 2) * Math.PI) / 180);
}

/** What the coupling takes of each kind of misalignment by itself. */
export interface Allowed {
  /** degrees */
  readonly angular: number;
  readonly parallel: number;
  readonly axial: number;
}

/**
 * What the gaps allow: the rims must not meet, the ring stays clear of the jaws, the lobes are squeezed so far. A hard insert takes less of angle and
 * offset, since it pushes jaws and shafts aside: see `insertGive`.
 */
export function allowedMisalignment({ insert, jaws, gap }: CouplingDesign): Allowed {
  const outside = 2 * jaws.outer;
  const tips = Math.min(gap - jaws.height, gap - insert.finished.height);
  const byRim = (Math.atan(tips / outside) * 180) / Math.PI;
  const squeeze = MOST_SQUEEZE * 2 * insert.finished.halfWidth - Math.max(0, -insert.flankClearance);
  const byRing = jaws.inner - insert.finished.ring;
  const give = insertGive(insert);
  return {
    angular: Math.min(give * MOST.angular, byRim),
    parallel: Math.max(
      0.001,
      Math.min(give * MOST.parallel, give * MOST.parallelShare * outside, 2 * squeeze, 2 * byRing),
    ),
    axial: tips / 2,
  };
}

/** Shares of what is allowed that the stated misalignment uses; together they should stay at or below 1. */
export function usedMisalignment(design: CouplingDesign): number {
  const { angular, parallel, axial } = design.misalignment;
  const allowed = allowedMisalignment(design);
  return angular / allowed.angular + parallel / allowed.parallel + axial / allowed.axial;
}
