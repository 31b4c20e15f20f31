import type { BodyRecipe } from '../../solid/recipe.js';
import type { Expected } from '../part-kind.js';

/** A body as a recipe, and what it must measure. */
export interface PlannedBody {
  readonly recipe: BodyRecipe;
  readonly expected: Expected;
}
