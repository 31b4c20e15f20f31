import type { Limits } from '../../judge/check.js';
import { ROUGH_DRIVE, SHOCK_FACTORS, type Shock, SMOOTH_DRIVE } from '../../mechanics/coupling/service-factors.js';
import { DRY_PRINT_WORDS, FRICTION } from '../../mechanics/friction.js';
import { holding } from '../../mechanics/power-screw/holding.js';
import { raisingTorque } from '../../mechanics/power-screw/raising-torque.js';
import { canBeRaised } from '../../mechanics/power-screw/thread.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { plain } from '../../units/format.js';

/** A grip holds so much more than the greatest working torque, and than the motor's. @source derived */
const OVER_WORKING = 1.3;
const OVER_MOTOR = 1.5;

/** Torque that a grip must hold. */
export interface GripDemand {
  /** greatest torque in work, and where it comes from [N·mm] */
  readonly working: number;
  readonly words: string;
  /** holding torque of the motor [N·mm] */
  readonly motor: number;
  /** whether the axis falls where a grip slips */
  readonly falls: boolean;
  /** what it is where nothing strikes, if nobody tells of shocks */
  readonly smooth?: GripDemand;
}

/** What a drive asks of its grips. */
export interface DriveTask {
  readonly motor: number;
  readonly screw?: Screw | undefined;
  readonly load?: number | undefined;
  /** undefined where nobody tells: the heaviest then counts */
  readonly shock?: Shock | undefined;
  /** an axis that is not known to lie counts as one that stands */
  readonly lies: boolean;
  /** whether the grip carries a screw that hangs: what slips around slips along too, since friction points against the slip */
  readonly hangs?: boolean;
}

/** The greatest torque that goes through a grip: that of load and screw where both are told, else the motor's. */
export function gripDemand(task: DriveTask): GripDemand {
  if (task.shock !== undefined) return demandAt(task, task.shock);
  return { ...demandAt(task, ROUGH_DRIVE.shock), smooth: demandAt(task, SMOOTH_DRIVE.shock) };
}

/** Says in the report what a sheet leaves out of shocks. */
export function noteUntoldShock(shock: Shock | undefined, assumptions: Assumptions): void {
  if (shock === undefined) assumptions.note('duty.shock', ROUGH_DRIVE.shock, 'not told: the heaviest is judged');
}

function demandAt(task: DriveTask, shock: Shock): GripDemand {
  const { motor, screw, load, lies, hangs = false } = task;
  const falls = hangs || (!lies && (screw === undefined || holdingOf(screw) === 'falls'));
  const raised = screw && load ? raisedBy(screw, load) : undefined;
  if (raised === undefined)
    return { working: motor, words: "the motor's, since load or screw is not told", motor, falls };
  const factor = SHOCK_FACTORS[shock];
  const told = task.shock === undefined ? ' at most, since none is told' : '';
  const struck = factor === 1 ? '' : `, shock × ${plain(factor, 1)}${told}`;
  const words = `${plain(load!, 0)} N on the screw at friction ${FRICTION.high}, ${DRY_PRINT_WORDS}${struck}`;
  const working = raised * factor;
  return working < motor
    ? { working, words, motor, falls }
    : { working: motor, words: "the motor's, which load and shock use up", motor, falls };
}

function holdingOf({ lead, major, pitchDiameter, flankAngle }: Screw) {
  return holding({ lead, major: major.likely, pitchDiameter: pitchDiameter.likely, flankAngle });
}

function raisedBy({ lead, pitchDiameter, flankAngle }: Screw, axialForce: number): number | undefined {
  const loaded = { axialForce, lead, meanDiameter: pitchDiameter.likely, flankAngle, friction: FRICTION.high };
  return canBeRaised(loaded) ? raisingTorque(loaded) : undefined;
}

/** Fail below 1.3 × the working torque, or where the axis would fall below 1.5 × the motor's; caution below the latter. */
export function gripLimits({ working, motor, falls }: GripDemand): Limits {
  const jam = OVER_MOTOR * motor;
  return { pass: { min: jam }, fail: { min: falls ? jam : OVER_WORKING * working } };
}
