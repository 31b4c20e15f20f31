import type { LineKind, Point, Stroke } from '../../part-views.js';

/** A straight line. */
export function line(kind: LineKind, from: Point, to: Point): Stroke {
  return { kind: 'path', line: kind, points: [from, to] };
}

/** A closed loop of straight lines. */
function loop(kind: LineKind, points: readonly Point[]): Stroke {
  return { kind: 'path', line: kind, points, closed: true };
}

/** An upright rectangle between two opposite corners. */
export function box(kind: LineKind, [x0, y0]: Point, [x1, y1]: Point): Stroke {
  return loop(kind, [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]);
}

/** A circle. */
export function ring(kind: LineKind, center: Point, radius: number): Stroke {
  return { kind: 'circle', line: kind, center, radius };
}

/** A piece of a circle, counter-clockwise between two angles from the right [degrees]. */
export function arc(kind: LineKind, center: Point, radius: number, from: number, to: number): Stroke {
  return { kind: 'arc', line: kind, center, radius, from, to };
}

/** How far a centre line stands out of what is so large: 3 mm, and less of small things. */
export function beyond(size: number): number {
  return Math.min(3, 0.12 * size);
}

/** Two centre lines across a point, each reaching as far to either side. */
export function crossing([x, y]: Point, across: number, up = across): Stroke[] {
  return [line('centre', [x - across, y], [x + across, y]), line('centre', [x, y - up], [x, y + up])];
}
