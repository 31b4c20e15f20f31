import { SOLID_GROUP } from '../../judge/accept.js';
import type { CheckFacts, Finding } from '../../judge/check.js';
import { hard } from '../../judge/check.js';
import type { Kernel } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME, type ThreadMate } from '../../solid/mate.js';
import { mateFinding, threadMate } from '../common/thread-mate.js';
import type { NutDesign } from './dimensions.js';

/**
 * The screw at its largest is tried in the nut at its smallest.
 *
 *     V = greatest common volume in six poses: centred and pushed ± 0.9 · play/2, each also turned by half a facet
 *     nut = its diameters less the scatter of holes and shrink; screw = its largest that still goes in
 */
const MATE: CheckFacts = {
  id: 'solid-mate',
  group: SOLID_GROUP,
  question: 'prints',
  title: 'Common volume of the largest screw in the smallest nut',
  unit: 'mm³',
  source: 'derived: the solids themselves',
  limits: hard({ max: NO_COMMON_VOLUME }),
  moves: 'fit.diametral, fit.axial',
};

/** Tries the screw at its largest in the nut at finished sizes less their uncertainty, on the solids themselves. */
export function mateNut(design: NutDesign, kernel: Kernel): Finding[] {
  return [mateFinding(MATE, nutMate(design), kernel)];
}

/** Nut and screw as solids for the mating test, and the play between them. */
export function nutMate(design: NutDesign): ThreadMate {
  const { thread, lead, length } = design.finished;
  return threadMate({ ...design, thread, lead, length });
}
