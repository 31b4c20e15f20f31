import type { PartViews, SizeChoice } from '../../part-views.js';
import { plainViews } from '../../plain-views.js';
import type { NutDesign } from '../dimensions.js';
import { nutBodies } from './bodies.js';

/** Members of the family are shown by the outer sizes of their bodies. */
export function familyViews(design: NutDesign, sizes: SizeChoice): PartViews {
  const bodies = nutBodies(design).map(({ recipe, expected }) => ({
    name: recipe.name,
    material: recipe.material,
    bounds: expected.bounds,
  }));
  return plainViews(design, bodies, sizes);
}
