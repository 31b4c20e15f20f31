import { requireNotNegative, requirePositive, requireWhole } from '../units/require.js';

/** A stepper and its gearing. */
export interface StepDrive {
  /** full steps a motor turn [-], whole, 1 to 10000: 200 for a 1.8° motor, 400 for 0.9° */
  readonly steps: number;
  /** g, motor turns a screw turn [-], > 0; 1 unless geared */
  readonly gear?: number | undefined;
}

function requireDrive(lead: number, drive: StepDrive): number {
  requirePositive('lead', lead);
  requireWhole('steps', drive.steps, 1, 10000);
  const { gear = 1 } = drive;
  requirePositive('gear', gear);
  return gear;
}

/**
 * Travel of one full motor step.
 *
 *     s = l / (N·g)
 *
 * @param p.lead   l  travel per screw turn            [mm]  > 0
 * @param p.steps  N  full steps a motor turn          [-]   whole, 1 to 10000
 * @param p.gear   g  motor turns a screw turn         [-]   > 0, default 1
 * @returns s [mm]
 * @throws InputError  a value is outside its range
 * @source derived: from the definitions
 * @example fullStepTravel({ lead: 8, steps: 200 }) // 0.04
 */
export function fullStepTravel(p: StepDrive & { readonly lead: number }): number {
  const gear = requireDrive(p.lead, p);
  return p.lead / (p.steps * gear);
}

/**
 * What the controller must be told: steps a millimetre of travel.
 *
 *     k = N·m·g / l
 *
 * @param p.lead        l  travel per screw turn        [mm]  > 0
 * @param p.steps       N  full steps a motor turn      [-]   whole, 1 to 10000
 * @param p.microsteps  m  microsteps a full step       [-]   whole, 1 to 1024
 * @param p.gear        g  motor turns a screw turn     [-]   > 0, default 1
 * @returns k [1/mm]
 * @throws InputError  a value is outside its range
 * @source derived: from the definitions
 * @example stepsPerMm({ lead: 2, steps: 200, microsteps: 16 }) // 1600
 */
export function stepsPerMm(p: StepDrive & { readonly lead: number; readonly microsteps: number }): number {
  const gear = requireDrive(p.lead, p);
  requireWhole('microsteps', p.microsteps, 1, 1024);
  return (p.steps * p.microsteps * gear) / p.lead;
}

/**
 * Feed that a motor speed gives.
 *
 *     v = n·l / (60·g)
 *
 * @param p.lead   l  travel per screw turn          [mm]   > 0
 * @param p.speed  n  motor speed                    [rpm]  0 or above
 * @param p.gear   g  motor turns a screw turn       [-]    > 0, default 1
 * @returns v [mm/s]
 * @throws InputError  a value is outside its range
 * @source derived: from the definitions
 * @example feedAtSpeed({ lead: 8, speed: 300 }) // 40
 */
export function feedAtSpeed(p: {
  readonly lead: number;
  readonly speed: number;
  readonly gear?: number | undefined;
}): number {
  const { gear = 1 } = p;
  requirePositive('lead', p.lead);
  requireNotNegative('speed', p.speed);
  requirePositive('gear', gear);
  return (p.speed * p.lead) / (60 * gear);
}
