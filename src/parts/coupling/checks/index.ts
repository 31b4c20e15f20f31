import type { Check } from '../../../fit/check.js';
import { shrinkAppliedOnce } from '../../common/checks.js';
import type { CouplingDesign } from '../dimensions.js';
import { clampPressure, flatPressure, gripTorque, setScrewGrip } from './grip.js';
import { heat } from './heat.js';
import { couplingPlay, insertPeak, insertSqueeze, insertStress, lostMotion, misalignmentTaken } from './insert.js';
import { jawBending, jawShear, printBridge, printLines, wall } from './jaws.js';
import {
  assemblyEntry,
  assemblyRoom,
  boreRunout,
  couplingAxial,
  headInside,
  insertThrust,
  matchedHalf,
  motorThrust,
  shaftEngagement,
  shaftGap,
  speed,
  toolAccess,
} from './mount.js';

/** Every check of a coupling, in the order of the report. */
export const COUPLING_CHECKS: readonly Check<CouplingDesign>[] = [
  couplingAxial,
  motorThrust,
  insertThrust,
  gripTorque,
  flatPressure,
  clampPressure,
  setScrewGrip,
  insertStress,
  insertPeak,
  insertSqueeze,
  misalignmentTaken,
  couplingPlay,
  lostMotion,
  jawBending,
  jawShear,
  wall,
  shaftEngagement,
  shaftGap,
  boreRunout,
  assemblyRoom,
  assemblyEntry,
  toolAccess,
  headInside,
  matchedHalf,
  speed,
  heat,
  printLines,
  printBridge,
  shrinkAppliedOnce,
];
