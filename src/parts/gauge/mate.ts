import { SOLID_GROUP } from '../../judge/accept.js';
import { type Finding, hard } from '../../judge/check.js';
import type { Kernel } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../solid/mate.js';
import { mateFinding, threadMate } from '../common/thread-mate.js';
import { fitOfPlay, type GaugeDesign } from './dimensions.js';

/** Tries the screw at its largest in the tightest ring. */
export function mateGauge(design: GaugeDesign, kernel: Kernel): Finding[] {
  const { finished, screw } = design;
  const ring = finished.rings.reduce((a, b) => (b.play < a.play ? b : a));
  const { thread, length } = ring;
  const fit = fitOfPlay(ring.play, screw.flankAngle);
  /**
   * The screw at its largest is tried in the tightest ring.
   *
   *     V = greatest common volume in six poses: centred and pushed ± 0.9 · play/2, each also turned by half a facet
   *     ring = its diameters less the scatter of holes and shrink; screw = its largest that still goes in
   */
  const about = {
    id: 'solid-mate',
    group: SOLID_GROUP,
    question: 'prints',
    title: 'Common volume of the largest screw in the tightest ring',
    unit: 'mm³',
    source: 'derived: the solids themselves',
    limits: hard({ max: NO_COMMON_VOLUME }),
    moves: 'plays.from, turns_play',
  };
  return [mateFinding(about, threadMate({ ...design, thread, length, lead: finished.lead, fit }), kernel)];
}
