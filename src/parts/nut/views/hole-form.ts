import { type HolePlaces, rectangleOf } from '../../common/hole-pattern.js';

/** How a drawing states where holes stand. */
export type HoleForm =
  /** all on one circle about the axis */
  | { readonly kind: 'circle'; readonly radius: number }
  /** by their distances along the axes */
  | { readonly kind: 'rectangle'; readonly along_x: number; readonly along_y: number }
  /** two, one on either side of the axis on X: by their distance */
  | { readonly kind: 'pair'; readonly distance: number }
  /** by the hole table */
  | { readonly kind: 'free' };

/** Places that differ by less are one, mm. */
const SAME = 1e-6;

/** The form of a pattern of holes. */
export function formOf(places: HolePlaces): HoleForm {
  const { centres } = places;
  const rectangle = rectangleOf(places);
  if (rectangle) return { kind: 'rectangle', ...rectangle };
  const radius = Math.hypot(...(centres[0] ?? [0, 0]));
  if (!centres.every((at) => Math.abs(Math.hypot(...at) - radius) < SAME)) return { kind: 'free' };
  const lies = centres.length === 2 && centres.every(([, y]) => Math.abs(y) < SAME);
  return lies && radius > SAME ? { kind: 'pair', distance: 2 * radius } : { kind: 'circle', radius };
}
