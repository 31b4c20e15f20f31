import { requireEnds, type ScrewEnds } from '../mechanics/ends.js';
import { PLASTIC_NUT_SPEED } from '../mechanics/sliding.js';
import { ASSUMED_MOTOR_SPEED } from '../mechanics/stepper.js';
import { fault } from '../units/faults.js';
import { plain } from '../units/format.js';
import { requireNotNegative, requirePositive, requireRange, requireWhole } from '../units/require.js';

/** What the screw is asked to do. Everything is optional; what is missing is assumed and listed, or left out. */
export interface Duty {
  /** full steps a motor turn; 200 unless given */
  readonly steps?: number | undefined;
  /** microsteps a full step; 16 unless given */
  readonly microsteps?: number | undefined;
  /** motor turns a screw turn; 1 unless given */
  readonly gear?: number | undefined;
  /** force along the axis [N] */
  readonly load?: number | undefined;
  readonly axis?: 'vertical' | 'horizontal' | undefined;
  /** free length of the screw [mm] */
  readonly span?: number | undefined;
  readonly ends?: ScrewEnds | undefined;
  /** layer heights to judge [mm] */
  readonly layerHeights?: readonly number[] | undefined;
  /** holding torque of the motor [N·mm] */
  readonly motorTorque?: number | undefined;
  /** speed up to which the motor is useful [rpm]; worked out from its winding, or 300, unless given */
  readonly motorSpeed?: number | undefined;
  /** rated phase current [A], inductance [mH] and supply [V]: all three give the motor's speed */
  readonly motorCurrent?: number | undefined;
  readonly motorInductance?: number | undefined;
  readonly supplyVoltage?: number | undefined;
  /** feed wanted [mm/s] */
  readonly feed?: number | undefined;
  /** share of the time in motion, 0 to 1 */
  readonly moving?: number | undefined;
  /** sliding speed that the nut bears [mm/s]; 500 unless given */
  readonly slidingSpeed?: number | undefined;
  /** diametral clearance of the nut [mm], for its play */
  readonly diametralClearance?: number | undefined;
  /** axial clearance of the nut besides, over both flanks [mm] */
  readonly axialClearance?: number | undefined;
}

/** A value that was not given. */
export interface Assumption {
  readonly field: string;
  readonly value: number | string;
  readonly why: string;
}

/** A duty whose drive is complete; load, span and the like stay absent when unknown. */
export interface FullDuty extends Duty {
  readonly steps: number;
  readonly microsteps: number;
  readonly gear: number;
  readonly ends: ScrewEnds;
  readonly slidingSpeed: number;
  readonly assumptions: readonly Assumption[];
}

/**
 * Checks a duty and fills in what can be assumed, each value listed.
 * @throws InputError  a value is outside its range; the path names the field as in a sheet
 */
export function fullDuty(duty: Duty): FullDuty {
  requireDuty(duty);
  const assumptions: Assumption[] = [];
  const or = <T extends number | string>(given: T | undefined, field: string, value: T, why: string): T => {
    if (given !== undefined) return given;
    assumptions.push({ field, value, why });
    return value;
  };
  const steps = or(duty.steps, 'duty.motor.steps', 200, 'a motor of 1.8° a step, the usual one');
  const microsteps = or(duty.microsteps, 'duty.motor.microsteps', 16, 'the usual setting');
  const gear = or(duty.gear, 'duty.motor.gear', 1, 'the motor turns the screw directly');
  if (!knowsMotorSpeed(duty)) {
    or<number>(
      undefined,
      'duty.motor.speed',
      ASSUMED_MOTOR_SPEED,
      'rpm; small motors keep their torque to about 300 to 600',
    );
  }
  const slidingSpeed = or(duty.slidingSpeed, 'duty.sliding_speed', PLASTIC_NUT_SPEED, 'mm/s; what a plastic nut bears');
  const why = 'the least stiff way, as nothing else is known';
  const ends = duty.span === undefined ? (duty.ends ?? 'fixed-free') : or(duty.ends, 'duty.ends', 'fixed-free', why);
  if (duty.load !== undefined)
    assumptions.push({ field: 'duty.collar', value: 0, why: 'thrust taken by a rolling bearing' });
  return { ...duty, steps, microsteps, gear, ends, slidingSpeed, assumptions };
}

/** True where the motor's speed limit follows from what was given. */
function knowsMotorSpeed(duty: Duty): boolean {
  const winding = [duty.motorCurrent, duty.motorInductance, duty.supplyVoltage];
  return duty.motorSpeed !== undefined || winding.every((value) => value !== undefined);
}

function requireDuty(duty: Duty): void {
  if (duty.steps !== undefined) requireWhole('duty.motor.steps', duty.steps, 4, 10000);
  if (duty.microsteps !== undefined) requireWhole('duty.motor.microsteps', duty.microsteps, 1, 1024);
  const positive = {
    'duty.motor.gear': duty.gear,
    'duty.span': duty.span,
    'duty.motor.torque': duty.motorTorque,
    'duty.motor.speed': duty.motorSpeed,
    'duty.motor.current': duty.motorCurrent,
    'duty.motor.inductance': duty.motorInductance,
    'duty.motor.voltage': duty.supplyVoltage,
    'duty.feed': duty.feed,
    'duty.sliding_speed': duty.slidingSpeed,
  };
  for (const [path, value] of Object.entries(positive)) if (value !== undefined) requirePositive(path, value);
  duty.layerHeights?.forEach((height, index) => {
    requirePositive(`duty.layer_heights[${index}]`, height);
  });
  const notNegative = {
    'duty.load': duty.load,
    'fit.diametral': duty.diametralClearance,
    'fit.axial': duty.axialClearance,
  };
  for (const [path, value] of Object.entries(notNegative)) if (value !== undefined) requireNotNegative(path, value);
  if (duty.moving !== undefined) requireRange('duty.moving', duty.moving, 0, 1);
  if (duty.ends !== undefined) requireEnds('duty.ends', duty.ends);
  if (duty.axis !== undefined && duty.axis !== 'vertical' && duty.axis !== 'horizontal') {
    throw fault('duty.axis', duty.axis, 'must be vertical or horizontal');
  }
}

/** `12 N`: a force as a sentence shows it. */
export function newtons(force: number): string {
  return `${plain(force, force < 10 ? 1 : 0)} N`;
}
