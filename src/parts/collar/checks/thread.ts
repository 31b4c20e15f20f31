import { type Check, hard, type LimitsInForce, soft, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { plain, upwards, worked } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { printLayers, printThreadDepth, type ThreadInPrint } from '../../common/thread-in-print.js';
import type { CollarDesign } from '../dimensions.js';
import { boreEnd } from '../plan.js';
import { flankClearance, spreadPlay, spreads, threadedCollar } from '../thread-fit.js';

type CollarCheck = Check<CollarDesign>;
const thread = { group: 'thread', question: 'goes-on', unit: 'mm', source: 'common practice' } as const;

/**
 * A thread that is cut tighter than its screw does not go on; what print and screw take of it a spread slit gives back.
 *
 *     c = diametral clearance on the pitch line, as cut and printed; at its least with the slit spread, at most to what was cut
 */
const threadClearance: CollarCheck = {
  ...thread,
  id: 'thread-clearance',
  title: 'Pitch-line clearance',
  limits: hard({ min: 0.05 }),
  moves: 'fit.diametral, printer.hole_offset, material.shrink.plane, screw.pitch_diameter',
  run: (design, { pass }) => {
    const collar = threadedCollar(design);
    if (!collar) return undefined;
    const cut = flankClearance(collar);
    const slit = spreads(collar);
    const clearance = { ...cut, least: Math.min(cut.likely, cut.least + slit) };
    const { min = 0 } = pass;
    const cure = allKeep(clearance, pass)
      ? ''
      : `; a fit.diametral ${upwards(min - clearance.least)} mm larger gives it`;
    return valued(
      clearance,
      `${worked(cut.likely, 'mm')} mm on the diameter between flanks, at least ${worked(cut.least, 'mm')} mm as printed, and the slit spreads by ${worked(slit, 'mm')} mm${cure}`,
    );
  },
};

/** A collar whose pitch drifts by more than its play jams on the way. */
const threadPitchError: CollarCheck = {
  ...thread,
  id: 'thread-pitch-error',
  title: 'Least play left over the whole length, the slit spread',
  limits: soft({ min: 0.05 }, { min: 0 }),
  moves: 'fit.axial, fit.diametral, length, material.shrink.axial, screw.pitch_diameter, screw.pitch',
  run: (design, { pass }) => {
    const collar = threadedCollar(design);
    if (!collar) return undefined;
    const { play, drift } = spreadPlay(collar);
    const left = play - drift;
    const cure = keeps(left, pass)
      ? ''
      : `; a shorter collar, a fit.axial ${upwards((pass.min ?? 0) - left)} mm larger or a wider fit.diametral leaves more`;
    return valued(
      exactly(left),
      `${worked(play, 'mm')} mm of play at its least, the slit spread, less ${worked(drift, 'mm')} mm of pitch error over ${plain(boreEnd(design.finished))} mm${cure}`,
    );
  },
};

const METAL = 'hold it by friction with a metal collar behind it (bore: plain, backed_by: metal-collar)';

/** What is asked of a printed thread, of a collar that has one. */
const printed = (check: Check<ThreadInPrint>): CollarCheck => ({
  ...check,
  run: (design: CollarDesign, limits: LimitsInForce) => {
    const collar = threadedCollar(design);
    return collar && check.run(collar, limits);
  },
});

/** Whether the collar's own thread goes on its screw, and can be printed. */
export const THREAD_CHECKS: readonly CollarCheck[] = [
  threadClearance,
  threadPitchError,
  printed(printLayers(METAL)),
  printed(printThreadDepth(METAL)),
];
