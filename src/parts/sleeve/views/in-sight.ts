import type { Shape } from '../../../solid/recipe.js';
import { type SizeWay, spreadOf } from '../../common/drawn/spread.js';
import type { SizeChoice } from '../../part-views.js';
import type { SleeveDesign } from '../dimensions.js';
import type { SleevePlan } from '../plan.js';
import { sleeveBody } from '../solid.js';

/** A sleeve at the sizes of one choice, with what several views ask of it. */
export interface SleeveInSight {
  readonly design: SleeveDesign;
  readonly choice: SizeChoice;
  /** its bodies as they are drawn; views that show one share it, so that it is built once */
  readonly shapes: readonly Shape[];
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
  return {
    design,
    choice,
    shapes: [sleeveBody(design, choice).recipe.shape],
    plan,
    radius: plan.outside / 2,
    spread: spreadOf(design, choice),
  };
}
