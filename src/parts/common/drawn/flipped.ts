import type { Point, Stroke } from '../../part-views.js';

/** Strokes seen from the other side: what was on the right is on the left. */
export function flipped(strokes: readonly Stroke[]): Stroke[] {
  return strokes.map((stroke): Stroke => {
    if (stroke.kind === 'path') return { ...stroke, points: stroke.points.map(flip) };
    if (stroke.kind === 'circle') return { ...stroke, center: flip(stroke.center) };
    return { ...stroke, center: flip(stroke.center), from: 180 - stroke.to, to: 180 - stroke.from };
  });
}

function flip([x, y]: Point): Point {
  return [-x, y];
}
