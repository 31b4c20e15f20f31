import { radians } from '../mechanics/angle.js';
import { columnLoad } from '../mechanics/column.js';
import { DRY_PRINT_MOST, FRICTION } from '../mechanics/friction.js';
import { axialForceFromTorque } from '../mechanics/power-screw/axial-force.js';
import { efficiency } from '../mechanics/power-screw/efficiency.js';
import { holding, holdingAtFriction } from '../mechanics/power-screw/holding.js';
import { leadAngle } from '../mechanics/power-screw/lead-angle.js';
import { loweringTorque } from '../mechanics/power-screw/lowering-torque.js';
import { raisingTorque } from '../mechanics/power-screw/raising-torque.js';
import { selfLockingFriction } from '../mechanics/power-screw/self-locking.js';
import { canBeRaised, type ScrewThread } from '../mechanics/power-screw/thread.js';
import { slidingPerTravel } from '../mechanics/sliding.js';
import { USABLE_TORQUE_SHARE } from '../mechanics/stepper.js';
import { fullStepTravel, stepsPerMm } from '../mechanics/travel.js';
import { whirlSpeed } from '../mechanics/whirl.js';
import { plain, rounded } from '../units/format.js';
import { type Assumption, type Duty, type FullDuty, fullDuty } from './duty.js';
import { feedLimit, feedLimits } from './feed-limit.js';
import { gridHeights, layerNumbers } from './layers.js';
import type { ByFriction, DriveNumbers } from './numbers.js';
import { type DriveScrew, requireDriveScrew, screwName } from './screw.js';
import { driveWords, playWords } from './words.js';

/**
 * Everything that can be said of a screw as a drive: travel, steps, torque, holding, feed, whirl, column and layers.
 * Figures that rest on a load or a span are absent without it; every default that was used is listed.
 *
 * @param screw  sizes and lead [mm], flank angle [degrees]
 * @param duty   load [N], span [mm], motor torque [N·mm], feed [mm/s] and the like
 * @returns plain data, ready for JSON
 * @throws InputError  a value is outside its range
 * @source common-practice: drive-train numbers; each formula names its own
 * @example driveNumbers(driveScrewOf(parseDesignation('Tr8x8(P2)')), {}).steps_per_mm // 400
 */
export function driveNumbers(screw: DriveScrew, duty: Duty): DriveNumbers {
  requireDriveScrew(screw);
  const full = fullDuty(duty);
  const thread = { meanDiameter: screw.pitchDiameter, lead: screw.lead, flankAngle: screw.flankAngle };
  const numbers: Omit<DriveNumbers, 'words'> = {
    ...identity(screw),
    ...travelNumbers(screw, full),
    lead_angle: rounded(leadAngle(thread)),
    efficiency: byFriction((friction) => rounded(efficiency({ ...thread, friction }))),
    self_locking_friction: rounded(selfLockingFriction(thread)),
    holding: holding(screw),
    holding_at: byFriction((friction) => holdingAtFriction({ ...thread, friction })),
    ...torqueNumbers(thread, full),
    ...feedNumbers(screw, full),
    ...spanNumbers(screw, full),
    ...playNumbers(screw, full),
    assumptions: [...full.assumptions, ...rootAssumption(screw, full)],
  };
  return { ...numbers, words: driveWords(numbers, full) };
}

/** The same numbers with the play that a nut is likely to have on its own screw [mm], where they state one. */
export function withPlay(numbers: DriveNumbers, axial: number): DriveNumbers {
  if (numbers.play === undefined) return numbers;
  const play = { axial: rounded(axial), full_steps: rounded(axial / numbers.full_step) };
  const basic = new Set(playWords(numbers));
  const words = numbers.words.flatMap((one) => (basic.has(one) ? playWords({ play }) : [one]));
  return { ...numbers, play, words };
}

function identity(screw: DriveScrew) {
  const { form, flankAngle, major, pitch, starts, hand, lead } = screw;
  return { designation: screwName(screw), form, flank_angle: flankAngle, major, pitch, starts, hand, lead };
}

function travelNumbers(screw: DriveScrew, duty: FullDuty) {
  const fullStep = fullStepTravel({ lead: screw.lead, steps: duty.steps, gear: duty.gear });
  return {
    full_step: rounded(fullStep, 9),
    steps_per_mm: rounded(stepsPerMm({ ...duty, lead: screw.lead })),
    layers: (duty.layerHeights ?? []).map((height) => layerNumbers(height, fullStep)),
    grid_heights: gridHeights(fullStep),
    power_off_jump: rounded(2 * fullStep, 9),
    travel_per_degree: rounded(screw.lead / 360, 9),
  };
}

function torqueNumbers(thread: ScrewThread, duty: FullDuty) {
  const { load: axialForce, motorTorque, gear } = duty;
  const raised = (friction: number) => canBeRaised({ ...thread, friction });
  const raisable = raised(FRICTION.high);
  const loaded = (friction: number, force: number) => ({ ...thread, friction, axialForce: force });
  const usable = motorTorque === undefined ? undefined : USABLE_TORQUE_SHARE * motorTorque * gear;
  return {
    ...(axialForce !== undefined && {
      torque_lower: byFriction((friction) => rounded(loweringTorque(loaded(friction, axialForce)))),
      torque_hold: byFriction((friction) => rounded(Math.max(0, -loweringTorque(loaded(friction, axialForce))))),
    }),
    ...(axialForce !== undefined &&
      raisable && { torque_raise: byFriction((friction) => rounded(raisingTorque(loaded(friction, axialForce)))) }),
    ...(axialForce !== undefined &&
      raised(DRY_PRINT_MOST) && { torque_raise_dry_most: rounded(raisingTorque(loaded(DRY_PRINT_MOST, axialForce))) }),
    ...(axialForce !== undefined &&
      motorTorque !== undefined &&
      raisable && {
        motor_share: byFriction((friction) =>
          rounded(raisingTorque(loaded(friction, axialForce)) / (motorTorque * gear)),
        ),
      }),
    ...(usable !== undefined &&
      raisable && {
        push_force: byFriction((friction) => rounded(axialForceFromTorque({ ...thread, friction, torque: usable }))),
      }),
  };
}

function feedNumbers(screw: DriveScrew, duty: FullDuty) {
  const limits = feedLimits(screw, duty);
  const limit = feedLimit(limits);
  const perTravel = slidingPerTravel({ lead: screw.lead, meanDiameter: screw.pitchDiameter });
  const { feed, moving } = duty;
  return {
    feed_limit: { ...limit, value: rounded(limit.value) },
    feed_limits: {
      motor: rounded(limits.motor),
      sliding: rounded(limits.sliding),
      ...(limits.whirl !== undefined && { whirl: rounded(limits.whirl) }),
    },
    sliding: {
      per_travel: rounded(perTravel),
      ...(feed !== undefined && { speed: rounded(feed * perTravel) }),
      ...(feed !== undefined && moving !== undefined && { metres_per_hour: rounded(feed * perTravel * moving * 3.6) }),
    },
    ...(feed !== undefined && { motor_rpm: rounded((60 * feed * duty.gear) / screw.lead) }),
  };
}

function spanNumbers(screw: DriveScrew, duty: FullDuty) {
  if (duty.span === undefined) return {};
  const bar = { rootDiameter: screw.minor, span: duty.span, ends: duty.ends };
  return { whirl_rpm: rounded(whirlSpeed(bar)), column_load: rounded(columnLoad(bar)) };
}

/** The root is seldom measured: what was taken is told, and what a rolled screw may have. */
function rootAssumption({ minor, rolledMinor = minor }: DriveScrew, { span }: FullDuty): readonly Assumption[] {
  if (span === undefined || rolledMinor === minor) return [];
  const why = `mm, the thinnest root of its class, for whirl and column; a rolled screw may have ${plain(rolledMinor)}`;
  return [{ field: 'screw.minor', value: rounded(minor), why }];
}

function playNumbers(screw: DriveScrew, duty: FullDuty) {
  if (duty.diametralClearance === undefined && duty.axialClearance === undefined) return {};
  const { diametralClearance = 0, axialClearance = 0 } = duty;
  const axial = diametralClearance * Math.tan(radians(screw.flankAngle)) + axialClearance;
  const fullStep = fullStepTravel({ lead: screw.lead, steps: duty.steps, gear: duty.gear });
  return { play: { axial: rounded(axial), full_steps: rounded(axial / fullStep) } };
}

function byFriction<T>(figure: (friction: number) => T): ByFriction<T> {
  return { low: figure(FRICTION.low), nominal: figure(FRICTION.nominal), high: figure(FRICTION.high) };
}
