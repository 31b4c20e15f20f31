import type { Point, Stroke } from '../../part-views.js';
import type { Clamp } from '../clamp.js';
import { crossing, line } from './strokes.js';

/** Centre lines of clamp screws seen along the axis of the part, on +X or on −X; the screws of one side lie over one another. */
export function clampAxesAlong({ offset }: Clamp, radius: number, side: 1 | -1 = 1): Stroke[] {
  return [line('centre', [side * offset, -radius - 2], [side * offset, radius + 2])];
}

/**
 * Centre lines of clamp screws seen along themselves.
 * @param onPaper place of a point [x, z] of the part
 */
export function clampAxesAcross({ offset, heights, head, nut }: Clamp, onPaper: (point: Point) => Point): Stroke[] {
  const reach = Math.max(head, nut) / 2 + 1.5;
  return heights.flatMap((height) => crossing(onPaper([offset, height]), reach));
}
