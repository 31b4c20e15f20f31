import { type SizeWay, spreadOf } from '../../common/drawn/spread.js';
import type { SizeChoice } from '../../part-views.js';
import type { SleeveDesign } from '../dimensions.js';
import type { SleevePlan } from '../plan.js';

/** A sleeve at the sizes of one choice, with what several views ask of it. */
export interface SleeveInSight {
  readonly design: SleeveDesign;
  readonly choice: SizeChoice;
  readonly plan: SleevePlan;
  readonly radius: number;
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** Before the names of the sizes of the lower and the upper end. */
export const BEFORE = ['', 'upper_'] as const;

/** Words that begin a line. */
export function sentence(words: string): string {
  return `${words[0]!.toUpperCase()}${words.slice(1)}`;
}

/** A sleeve at the sizes of one choice. */
export function inSight(design: SleeveDesign, choice: SizeChoice): SleeveInSight {
  const plan = design[choice];
  return { design, choice, plan, radius: plan.outside / 2, spread: spreadOf(design, choice) };
}
