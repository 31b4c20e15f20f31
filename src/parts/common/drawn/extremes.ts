import type { Outline } from '../../../solid/outline.js';
import type { Point } from '../../part-views.js';

/**
 * The points between which an outline is as long as it is along x (0) or y (1); where a straight side ends it, the point
 * nearest to where the size stands.
 *
 * @param side  below or left: towards lower values of the other axis; above or right: towards higher ones
 */
export function extremes(
  outline: Outline,
  axis: 0 | 1,
  side: 'below' | 'above' | 'left' | 'right',
): readonly [Point, Point] {
  const towards = side === 'below' || side === 'left' ? -1 : 1;
  const other = axis === 0 ? 1 : 0;
  const most = (way: 1 | -1) =>
    outline.reduce((best, point) => {
      const gain = way * (point[axis] - best[axis]);
      const isNearer = Math.abs(gain) < 1e-9 && towards * (point[other] - best[other]) > 0;
      return gain > 1e-9 || isNearer ? point : best;
    });
  return [most(-1), most(1)];
}
