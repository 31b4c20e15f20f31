import type { Shape } from '../../../solid/recipe.js';
import type { SizeWay } from '../../common/drawn/spread.js';
import type { SizeChoice } from '../../part-views.js';
import type { CollarDesign } from '../dimensions.js';
import type { CollarPlan } from '../plan.js';

/** A collar at the sizes of one choice, with what several views ask of it. */
export interface CollarInSight {
  readonly design: CollarDesign;
  readonly choice: SizeChoice;
  /** its bodies as they are drawn; views that show one share it, so that it is built once */
  readonly shapes: readonly Shape[];
  readonly plan: CollarPlan;
  readonly radius: number;
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}
