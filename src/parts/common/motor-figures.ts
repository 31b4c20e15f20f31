/** Face and shaft of a stepper motor, where nobody tells: cases run at 50 to 80 °C. @source common-practice */
export const MOTOR_TEMPERATURE = 70;

/** The same in words, for the list of what was assumed. */
export const MOTOR_TEMPERATURE_WORDS = 'stepper cases run at 50 to 80 °C';

/** Angle between shafts that a coupling takes, by how it gives, degrees. @source common-practice */
export const COUPLING_ANGLE = { flexible: 1, disc: 0.5, rigid: 0.1 } as const;
