/**
 * Sliding friction of a nut on a steel screw, as three values instead of one: figures in print differ by a factor
 * of ten, so each question takes the value that is on its safe side.
 *
 * - `low`: new grease and vibration, for "will the axis fall?"
 * - `nominal`: a run-in nut, for the figures a buyer expects
 * - `high`: a dry printed nut, for "will the motor turn it?"
 *
 * @source common-practice
 */
export const FRICTION = { low: 0.08, nominal: 0.2, high: 0.5 } as const;

/**
 * What grease may take it down to. Forces that break a part, and grips on a greased screw, are judged by it: plastics on
 * greased steel rub with 0.05 to 0.15, prints in oil with 0.04 to 0.055, and coated screws with some 0.08.
 *
 * @source common-practice
 */
export const GREASED_LEAST = 0.05;

/** What a dry print may reach: tests on steel at low pressure gave 0.6 to 1.1. @source common-practice */
export const DRY_PRINT_MOST = 1.1;

/** Friction of a printed bore on a clean steel shaft, on the low side. @source common-practice */
const DRY_BORE = { usual: 0.15, pom: 0.1 } as const;

/**
 * Friction of a bore or face of this plastic on clean steel: 0.1 of POM, 0.15 of others.
 *
 * @param material.name  of a preset, such as `pom`
 * @returns µ [-]
 * @source common-practice
 * @example dryFriction({ name: 'pom' }) // 0.1
 */
export function dryFriction({ name }: { readonly name: string }): number {
  return /^pom\b/i.test(name) ? DRY_BORE.pom : DRY_BORE.usual;
}

/** How a message tells what a dry print may reach beside the 0.5 that it judges by. */
export const DRY_PRINT_WORDS = `a dry print may reach ${DRY_PRINT_MOST}`;

/** One of the three friction values. */
export type FrictionLevel = keyof typeof FRICTION;
