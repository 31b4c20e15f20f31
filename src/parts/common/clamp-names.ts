import type { Clamp } from './clamp.js';

/** Sizes of a clamp as they are named in a report; the height is that of its first screw. */
export function clampNames({ offset, heights, hole, headSeat, nutSeat }: Clamp): Record<string, number> {
  return {
    clamp_offset: offset,
    clamp_height: heights[0]!,
    clamp_hole_diameter: hole,
    head_seat: headSeat,
    nut_seat: nutSeat,
  };
}
