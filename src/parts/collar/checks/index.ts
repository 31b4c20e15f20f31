import type { Check } from '../../../judge/check.js';
import { UNTOLD_SPAN } from '../../common/axial-path.js';
import { heat, shrinkAppliedOnce } from '../../common/checks.js';
import { heldChecks } from '../../common/held-checks.js';
import { askedWhereItHangs, askedWhereWorse } from '../../common/untold.js';
import type { CollarDesign } from '../dimensions.js';
import { heldIn } from '../held-in.js';
import { USUAL_SHAFT } from '../untold.js';
import { shaftEngagement } from './engagement.js';
import { axialGrip, bothWays, frictionAlone, pinHold, threadHold, turnGrip } from './hold.js';
import { bearingBore, bearingCentre, bearingRating, runsOn, seatBacking, seatPressure, seatRunout } from './seat.js';
import { THREAD_CHECKS } from './thread.js';

/** What holds for every body that is clamped on a shaft, and is asked of a collar, which takes no torque. */
const OF_HELD = [
  'clamp-pressure',
  'closing-strain',
  'crest-grip',
  'wall',
  'tool-access',
  'head-inside',
  'print-bridge',
];
const holding = heldChecks<CollarDesign>(heldIn, { outside: 'outside_diameter', holds: ['hold'] }).filter(({ id }) =>
  OF_HELD.includes(id),
);

/** A warm collar lets go. */
const softens: Check<CollarDesign> = {
  ...heat,
  run: ({ material, temperature: { at, known } }, limits) =>
    heat.run({ material, duty: known ? { temperature: at } : {} }, limits),
};

/** Every check of a collar, in the order of the report. */
export const COLLAR_CHECKS: readonly Check<CollarDesign>[] = askedWhereItHangs<CollarDesign>(
  [
    bearingBore,
    ...THREAD_CHECKS,
    ...askedWhereWorse([axialGrip], [USUAL_SHAFT]),
    frictionAlone,
    bothWays,
    threadHold,
    pinHold,
    turnGrip,
    runsOn,
    bearingCentre,
    seatRunout,
    seatBacking,
    seatPressure,
    bearingRating,
    shaftEngagement,
    ...holding,
    softens,
    shrinkAppliedOnce,
  ],
  [UNTOLD_SPAN],
);
