import { PLASTIC_NUT_SPEED } from '../../mechanics/sliding.js';
import type { Material } from '../../presets/material.js';

/** Times the usual speed that a plastic slides at before it fails, as far as any plastic does. @source common-practice */
const TIMES_USUAL = 3;

/** Speed that a plastic usually slides at on a steel screw, and the most that it ever does [mm/s]. */
export function slidingLimits({ speedLimit: usual }: Pick<Material, 'speedLimit'>): {
  readonly usual: number;
  readonly most: number;
} {
  return { usual, most: Math.max(usual, Math.min(TIMES_USUAL * usual, PLASTIC_NUT_SPEED)) };
}
