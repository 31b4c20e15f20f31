import type { Check } from '../../../judge/check.js';
import { onceFor } from '../../../units/once.js';
import { heat, shrinkAppliedOnce } from '../../common/checks.js';
import { askedWhereWorse, askingFor } from '../../common/untold.js';
import type { NutDesign } from '../dimensions.js';
import { UNTOLD_RESTS } from '../warmth.js';
import { mountBinding } from './binding.js';
import { wall } from './body.js';
import { carriageWall } from './carriage-wall.js';
import { driveColumn, driveHolding, driveLayerGrid, driveSag, driveSpeed, driveTorque, driveWhirl } from './drive.js';
import { barrelPull, endStop, flangeBendingCheck, seatPressure } from './flange.js';
import {
  boltClamp,
  floatPull,
  floorBending,
  headSeat,
  holeClearance,
  holeEdge,
  holeEngagement,
  holePosition,
  holeSpacing,
  mountBore,
  mountFloat,
  mountHeld,
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
import { inBodyWarmth, inFlangeWarmth } from './warmed.js';
import { greaseCheck, moistureCheck, wearDepthCheck, wearDust, wearLimit } from './wear.js';

/** As warm as cabinets and covered machines get, °C. @source common-practice */
const WARMEST = 60;

/** The same nut in the warmth; undefined where its temperature is told. */
const inTheWarmth = onceFor(({ duty, ...design }: NutDesign): NutDesign | undefined =>
  duty.temperature === undefined ? { ...design, duty: { ...duty, temperature: WARMEST } } : undefined,
);

/** The same nut among grit; undefined where the sheet tells of it. */
function amongGrit({ duty, ...design }: NutDesign): NutDesign | undefined {
  return duty.dust === undefined ? { ...design, duty: { ...duty, dust: 'yes' } } : undefined;
}

/** Every check of a nut, in the order of the report. */
export const NUT_CHECKS: readonly Check<NutDesign>[] = [
  screwLead,
  screwSeries,
  screwHand,
  ...askedWhereWorse(
    [
      threadClearance,
      askingFor(UNTOLD_RESTS, threadPitchError),
      threadAxial,
      threadBacklash,
      threadCrestGap,
      threadRootGap,
      askingFor(UNTOLD_RESTS, threadRunningIn),
    ],
    [{ field: 'duty.temperature', worse: inTheWarmth }],
  ),
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
  ...inFlangeWarmth([floorBending]),
  mountBore,
  carriageWall,
  mountSeat,
  mountFloat,
  mountHeld,
  headSeat,
  ...inFlangeWarmth([boltClamp]),
  holeEngagement,
  ...inFlangeWarmth([floatPull]),
  mountBinding,
  threadPressureCheck,
  threadShearCheck,
  threadBendingCheck,
  threadStallCheck,
  ...inBodyWarmth([flangeBendingCheck, barrelPull]),
  ...inFlangeWarmth([seatPressure]),
  ...inBodyWarmth([endStop]),
  creepCheck,
  wearPv,
  wearPeak,
  wearSpeed,
  wearHeat,
  ...askedWhereWorse([wearDepthCheck], [{ field: 'duty.dust', worse: amongGrit }]),
  wearLimit,
  wearDust,
  greaseCheck,
  moistureCheck,
  driveHolding,
  driveTorque,
  driveSpeed,
  driveWhirl,
  driveColumn,
  driveSag,
  driveLayerGrid,
  heat,
];
