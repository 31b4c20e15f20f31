import type { PartViews, SizeChoice } from '../parts/part-views.js';
import { plainViews } from '../parts/plain-views.js';
import type { Design } from './design.js';
import type { KnownKind } from './known-kind.js';

/** What drawing, picture and page show of a design: what its kind says, or else boxes and main sizes. */
export function viewsOf(kind: KnownKind, design: Design, sizes: SizeChoice): PartViews {
  if (kind.views) return kind.views(design, sizes);
  const bodies = kind.bodies(design).map(({ recipe, expected }) => ({
    name: recipe.name,
    material: recipe.material,
    bounds: expected.bounds,
  }));
  return plainViews(design, bodies, sizes);
}
