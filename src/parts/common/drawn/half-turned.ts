import type { Point, Stroke } from '../../part-views.js';

/** Strokes turned half around their origin. */
export function halfTurned(strokes: readonly Stroke[]): Stroke[] {
  return strokes.map((stroke): Stroke => {
    if (stroke.kind === 'path') return { ...stroke, points: stroke.points.map(opposite) };
    if (stroke.kind === 'circle') return { ...stroke, center: opposite(stroke.center) };
    return { ...stroke, center: opposite(stroke.center), from: stroke.from + 180, to: stroke.to + 180 };
  });
}

function opposite([x, y]: Point): Point {
  return [-x, -y];
}
