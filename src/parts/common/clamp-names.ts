import type { Clamp } from './clamp.js';

/**
 * Sizes of a clamp as they are named in a report.
 * @param before what their names begin with
 * @param height that of its first screw, from the end it is next to [mm]
 */
export function clampNames(
  { offset, heights, hole, headSeat, nutSeat }: Clamp,
  before = '',
  height = heights[0]!,
): Record<string, number> {
  return {
    [`${before}clamp_offset`]: offset,
    [`${before}clamp_height`]: height,
    [`${before}clamp_hole_diameter`]: hole,
    [`${before}head_seat`]: headSeat,
    [`${before}nut_seat`]: nutSeat,
  };
}
