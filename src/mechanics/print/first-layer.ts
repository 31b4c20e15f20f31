import { requireNotNegative } from '../../units/require.js';

/** How far a squashed first layer spreads sideways: 0.1 to 0.3 mm is usual, chamfers of 0.3 to 0.5 mm take it up [mm]. */
const FIRST_LAYER_SPREAD = 0.2;

/**
 * How far the squashed first layer stands into a bore beyond its lead-in chamfer, on the diameter.
 *
 *     e = 2·max(0, s − k)
 *
 * @param p.spread   s  how far the first layer spreads, a side           [mm]  0 or above, default 0.2
 * @param p.chamfer  k  depth of the chamfer past the thread, a side      [mm]  0 or above
 * @returns e, diametral, at the end of the bore that lies on the bed [mm]
 * @throws InputError  a value is outside its range
 * @source common-practice: chamfers against the squashed first layer
 * @example firstLayerIntrusion({ spread: 0.25, chamfer: 0.1 }) // 0.3
 */
export function firstLayerIntrusion(p: { readonly spread?: number | undefined; readonly chamfer: number }): number {
  const { spread = FIRST_LAYER_SPREAD } = p;
  requireNotNegative('spread', spread);
  requireNotNegative('chamfer', p.chamfer);
  return 2 * Math.max(0, spread - p.chamfer);
}
