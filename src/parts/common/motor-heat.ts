import type { Assumptions } from '../../sheet/assumptions.js';

/** Face and shaft of a stepper motor that nobody measured: cases run so warm, °C. @source common-practice */
export const MOTOR_HEAT = { least: 50, most: 80 } as const;

/** How warm what touches the motor gets: as its face, and no cooler than the air around it, where that is told  [°C]. */
export function besideMotor(face: number, around: number | undefined): number {
  return Math.max(face, around ?? face);
}

/** How warm a motor gets, as told, or the hottest that is usual. */
export interface MotorHeat {
  readonly temperature: number;
  /** the coolest that is usual, where nobody tells */
  readonly coolest?: number;
}

/** What the sheet says of a motor's heat; judged by the hottest where it says nothing. */
export function motorHeat(temperature: number | undefined, assumptions: Assumptions): MotorHeat {
  if (temperature !== undefined) return { temperature };
  const { least, most } = MOTOR_HEAT;
  assumptions.note('motor.temperature', most, `stepper cases run at ${least} to ${most} °C, the hottest is judged`);
  return { temperature: most, coolest: least };
}
