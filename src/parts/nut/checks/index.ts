import type { Check } from '../../../judge/check.js';
import { heat, shrinkAppliedOnce } from '../../common/checks.js';
import type { NutDesign } from '../dimensions.js';
import { mountBinding } from './binding.js';
import { wall } from './body.js';
import { driveColumn, driveHolding, driveLayerGrid, driveSpeed, driveTorque, driveWhirl } from './drive.js';
import { barrelPull, endStop, flangeBendingCheck, seatPressure } from './flange.js';
import {
  boltClamp,
  floatPull,
  floorBending,
  headSeat,
  holeClearance,
  holeEdge,
  holePosition,
  holeSpacing,
  mountBore,
  mountFloat,
  mountSeat,
  pocketFloor,
  pocketWall,
} from './mount.js';
import { printOverhang, printSupport, threadInPrint, threadLeadIn } from './print.js';
import { wearHeat, wearPeak, wearPv, wearSpeed } from './rubbing.js';
import { screwSeries } from './series.js';
import { creepCheck, threadBendingCheck, threadPressureCheck, threadShearCheck, threadStallCheck } from './strength.js';
import {
  screwHand,
  screwLead,
  threadAxial,
  threadBacklash,
  threadClearance,
  threadCrestGap,
  threadPitchError,
  threadRootGap,
  threadRunningIn,
} from './thread.js';
import { greaseCheck, moistureCheck, wearDepthCheck, wearDust, wearLimit } from './wear.js';

/** Every check of a nut, in the order of the report. */
export const NUT_CHECKS: readonly Check<NutDesign>[] = [
  screwLead,
  screwSeries,
  screwHand,
  threadClearance,
  threadPitchError,
  threadAxial,
  threadBacklash,
  threadCrestGap,
  threadRootGap,
  threadRunningIn,
  threadLeadIn,
  ...threadInPrint,
  printOverhang,
  printSupport,
  shrinkAppliedOnce,
  wall,
  holePosition,
  holeClearance,
  holeEdge,
  holeSpacing,
  pocketWall,
  pocketFloor,
  floorBending,
  mountBore,
  mountSeat,
  mountFloat,
  headSeat,
  boltClamp,
  floatPull,
  mountBinding,
  threadPressureCheck,
  threadShearCheck,
  threadBendingCheck,
  threadStallCheck,
  flangeBendingCheck,
  barrelPull,
  seatPressure,
  endStop,
  creepCheck,
  wearPv,
  wearPeak,
  wearSpeed,
  wearHeat,
  wearDepthCheck,
  wearLimit,
  wearDust,
  greaseCheck,
  moistureCheck,
  driveHolding,
  driveTorque,
  driveSpeed,
  driveWhirl,
  driveColumn,
  driveLayerGrid,
  heat,
];
