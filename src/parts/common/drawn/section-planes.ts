import type { CuttingPlane, Point } from '../../part-views.js';
import { polar } from '../hole-pattern.js';

/**
 * The planes of a section, in a view along the axis.
 *
 * @param planes  angles of the upper and the lower half            [degrees]
 * @param reach   how far the outline reaches in a direction        [mm]
 * @param way     1 seen from +Z; −1 from −Z, where +X is on the left
 */
export function sectionPlanes(
  planes: readonly [number, number],
  reach: (angle: number) => number,
  way: 1 | -1 = 1,
): CuttingPlane[] {
  const seen = ([x, y]: Point): Point => [way * x, y];
  return planes.map((angle, i) => ({
    letter: 'A',
    at: seen(polar(reach(angle), angle)),
    away: seen(polar(1, angle)),
    look: seen(polar(1, i === 0 ? angle + 90 : angle - 90)),
  }));
}
