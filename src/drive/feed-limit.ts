import { FRICTION } from '../mechanics/friction.js';
import { raisingTorque } from '../mechanics/power-screw/raising-torque.js';
import { canBeRaised } from '../mechanics/power-screw/thread.js';
import { slidingPerTravel } from '../mechanics/sliding.js';
import { ASSUMED_MOTOR_SPEED, cornerSpeed, speedAtTorque, USABLE_TORQUE_SHARE } from '../mechanics/stepper.js';
import { feedAtSpeed } from '../mechanics/travel.js';
import { DERATING, whirlSpeed } from '../mechanics/whirl.js';
import type { FullDuty } from './duty.js';
import type { FeedCause } from './numbers.js';
import type { DriveScrew } from './screw.js';

/** Speed beyond which the simple model of the motor is not believed [rpm]. */
const FASTEST_BELIEVED = 1000;

/** Feed that each cause allows [mm/s]. */
export interface FeedLimits {
  readonly motor: number;
  readonly sliding: number;
  readonly whirl?: number;
}

/** The feeds that motor, sliding speed and, with a span, whirl at 80 % allow. */
export function feedLimits(screw: DriveScrew, duty: FullDuty): FeedLimits {
  const { lead } = screw;
  const limits = {
    motor: feedAtSpeed({ lead, speed: motorSpeedLimit(screw, duty), gear: duty.gear }),
    sliding: duty.slidingSpeed / slidingPerTravel({ lead, meanDiameter: screw.pitchDiameter }),
  };
  if (duty.span === undefined) return limits;
  const whirl = whirlSpeed({ rootDiameter: screw.minor, span: duty.span, ends: duty.ends });
  return { ...limits, whirl: feedAtSpeed({ lead, speed: DERATING * whirl }) };
}

/** The least of the limits; at a tie the motor is named before whirl, whirl before sliding. */
export function feedLimit(limits: FeedLimits): { readonly value: number; readonly set_by: FeedCause } {
  const causes: readonly FeedCause[] = ['motor', 'whirl', 'sliding'];
  return causes
    .map((set_by) => ({ value: limits[set_by] ?? Number.POSITIVE_INFINITY, set_by }))
    .reduce((least, next) => (next.value < least.value ? next : least));
}

/**
 * Motor speed that can be counted on: the one stated, else from the winding, else 300 rpm.
 * With winding, torque and load known it is the speed at which half the holding torque just raises the load at
 * nominal friction, at most 1000 rpm; 0 where it cannot raise it at all.
 */
function motorSpeedLimit(screw: DriveScrew, duty: FullDuty): number {
  if (duty.motorSpeed !== undefined) return duty.motorSpeed;
  const { motorCurrent: current, motorInductance: inductance, supplyVoltage: voltage } = duty;
  if (current === undefined || inductance === undefined || voltage === undefined) return ASSUMED_MOTOR_SPEED;
  const corner = cornerSpeed({ current, inductance, voltage, steps: duty.steps });
  const needed = neededTorque(screw, duty);
  if (needed === undefined || duty.motorTorque === undefined) return Math.min(corner, FASTEST_BELIEVED);
  return Math.min(FASTEST_BELIEVED, speedAtTorque({ torque: USABLE_TORQUE_SHARE * duty.motorTorque, corner, needed }));
}

/** Torque at the motor that raises the load at nominal friction; absent without a load. */
function neededTorque(screw: DriveScrew, duty: FullDuty): number | undefined {
  if (duty.load === undefined || duty.load === 0) return undefined;
  const thread = {
    meanDiameter: screw.pitchDiameter,
    lead: screw.lead,
    flankAngle: screw.flankAngle,
    friction: FRICTION.nominal,
  };
  return canBeRaised(thread) ? raisingTorque({ ...thread, axialForce: duty.load }) / duty.gear : undefined;
}
