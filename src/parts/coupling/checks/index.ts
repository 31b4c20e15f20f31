import type { Check } from '../../../judge/check.js';
import { UNTOLD_SPAN } from '../../common/axial-path.js';
import { shrinkAppliedOnce } from '../../common/checks.js';
import { askedWhereItHangs } from '../../common/untold.js';
import { besideCoolest, type CouplingDesign, neverStruck, seldomStarted } from '../dimensions.js';
import { holdingChecks, setScrewGrip } from './grip.js';
import { heat } from './heat.js';
import { couplingPlay, insertPeak, insertSqueeze, insertStress, lostMotion, misalignmentTaken } from './insert.js';
import { jawBare, jawBending, jawShear, printLines } from './jaws.js';
import {
  assemblyEntry,
  assemblyRoom,
  bothWays,
  couplingAxial,
  insertThrust,
  locating,
  matchedHalf,
  motorThrust,
  shaftGap,
  speed,
} from './mount.js';
import { padAside, padRoom } from './pad.js';

/** Every check of a coupling, in the order of the report. */
export const COUPLING_CHECKS: readonly Check<CouplingDesign>[] = askedWhereItHangs(
  [
    couplingAxial,
    locating,
    bothWays,
    motorThrust,
    insertThrust,
    ...holdingChecks,
    setScrewGrip,
    insertStress,
    insertPeak,
    insertSqueeze,
    misalignmentTaken,
    couplingPlay,
    lostMotion,
    jawBending,
    jawShear,
    jawBare,
    padAside,
    shaftGap,
    padRoom,
    assemblyRoom,
    assemblyEntry,
    matchedHalf,
    speed,
    heat,
    printLines,
    shrinkAppliedOnce,
  ],
  [
    { field: 'motor.temperature', milder: besideCoolest },
    { field: 'duty.starts', milder: seldomStarted },
    { field: 'duty.shock', milder: neverStruck },
    UNTOLD_SPAN,
  ],
);
