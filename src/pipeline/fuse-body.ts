import type { Kernel } from '../solid/kernel.js';
import type { Body } from '../solid/mesh.js';
import type { BodyRecipe } from '../solid/recipe.js';
import { InputError } from '../units/faults.js';

/**
 * Fuses one body. A recipe that gives no solid is a fault of ours, not of the sheet.
 * @throws Error the recipe gives no solid
 */
export function fuseBody(kernel: Kernel, { name, material, shape }: BodyRecipe): Body {
  try {
    return { ...kernel.fuse(shape), name, material };
  } catch (error) {
    if (error instanceof InputError) throw new Error(`the solid of ${name} could not be built: ${error.message}`);
    throw error;
  }
}
