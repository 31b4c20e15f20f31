import type { Shape } from '../../../solid/recipe.js';
import type { SizeWay } from '../../common/drawn/spread.js';
import type { MotorPlateDesign } from '../dimensions.js';
import type { MotorPlatePlan } from '../plan.js';

/** Chords of what is drawn, mm. */
export const CHORD = 0.01;

/** A plate at the sizes of one choice, with what several views ask of it. */
export interface PlateInSight {
  readonly design: MotorPlateDesign;
  /** its bodies as they are drawn; views that show one share it, so that it is built once */
  readonly shapes: readonly Shape[];
  readonly plan: MotorPlatePlan;
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** Sunk heads stand on the diagonal: the section goes through them. */
export function planesOf({ motor }: MotorPlatePlan): readonly [number, number] {
  return motor.sunk ? [45, 225] : [0, 180];
}
