import type { DrawnView, Point, Stroke } from '../../src/parts/part-views.js';

/** What chords of a part are off their arcs unless its printer says otherwise, mm. */
const CHORD = 0.01;

/** A size stands on a line that may be off by a chord of its arc, mm. */
const onLine = (chord: number) => 0.001 + chord;
/** Lines that meet on an arc may both be off by a chord; an end on a lying hole, of 24 sides, by what these are off, mm. */
const touching = (chord: number) => 0.045 + 1.5 * chord;

/** A corner that is broken lies off all lines, but both of its lines end so near to it, mm. */
const BROKEN = 2;

/** Sizes whose ends lie on no line of the view, nor in a broken corner, by their names. */
export function looseSizes({ sizes, strokes }: DrawnView, chord = CHORD): string[] {
  const near = onLine(chord);
  return sizes.flatMap(({ name, from, to, side }) => {
    const ends = side === 'leader' || side === 'riser' ? [to] : [from, to];
    const axis = side === 'above' || side === 'below' ? 0 : 1;
    const isCorner = (stroke: Stroke, end: Point) =>
      side !== 'leader' &&
      side !== 'riser' &&
      cornersOf(stroke).some(
        (corner) =>
          Math.abs(corner[axis] - end[axis]) < near && Math.hypot(corner[0] - end[0], corner[1] - end[1]) < BROKEN,
      );
    // where a slit opens a circle, its diameter is measured over the gap all the same
    const whole = strokes.map((stroke) => (stroke.kind === 'arc' ? { ...stroke, from: 0, to: 360 } : stroke));
    return ends
      .filter((end) => !whole.some((stroke) => distance(stroke, end) < near || isCorner(stroke, end)))
      .map((end) => `${name} at ${end.map((value) => value.toFixed(3)).join(', ')}`);
  });
}

/** What a size may be off the distance of its ends, which lie on lines of the solid, mm. */
const MEASURED = 0.01;

/** Sizes that are not what is measured between their ends: along their side, or as a diameter about a leader's middle. */
export function misstatedSizes({ sizes }: DrawnView): string[] {
  return sizes.flatMap(({ name, value, sign = '', from, to, side }) => {
    const apart = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const isAbout = (side === 'leader' || side === 'riser') && apart > 0 && sign.includes('⌀');
    if ((side === 'leader' || side === 'riser') && !isAbout) return [];
    const axis = side === 'above' || side === 'below' ? 0 : 1;
    const measured = isAbout ? 2 * apart : Math.abs(to[axis] - from[axis]);
    return Math.abs(measured - value) < MEASURED ? [] : [`${name}: ${value}, measured ${measured.toFixed(3)}`];
  });
}

/**
 * Ends of outlines and hidden lines that touch no other line; the halves of a bent section end on their axis.
 *
 * @param beside  what they may end on besides: lines of the bodies drawn alone
 * @param chord   what chords of the part are off their arcs [mm]
 */
export function looseEnds({ strokes }: DrawnView, beside: readonly Stroke[] = [], chord = CHORD): string[] {
  const near = touching(chord);
  const drawn = strokes.filter(({ line }) => line === 'outline' || line === 'hidden');
  return drawn.flatMap((stroke) => {
    const others = [...strokes.filter((other) => other !== stroke), ...beside];
    return endsOf(stroke)
      .filter((end, i) => ![...others, ...beyond(stroke, i)].some((other) => distance(other, end) < near))
      .map((end) => `${stroke.line} at ${end.map((value) => value.toFixed(3)).join(', ')}`);
  });
}

/** What of a path lies beyond the side that its first or last end belongs to: it may come back to itself. */
function beyond(stroke: Stroke, end: number): Stroke[] {
  if (stroke.kind !== 'path' || stroke.points.length < 4) return [];
  return [{ ...stroke, points: end === 0 ? stroke.points.slice(2) : stroke.points.slice(0, -2) }];
}

function cornersOf(stroke: Stroke): readonly Point[] {
  return stroke.line !== 'outline' ? [] : stroke.kind === 'path' ? stroke.points : endsOf(stroke);
}

function endsOf(stroke: Stroke): Point[] {
  if (stroke.kind === 'circle' || (stroke.kind === 'path' && stroke.closed)) return [];
  if (stroke.kind === 'path') return [stroke.points[0]!, stroke.points.at(-1)!];
  return [stroke.from, stroke.to].map((degrees): Point => {
    const angle = (degrees * Math.PI) / 180;
    return [stroke.center[0] + stroke.radius * Math.cos(angle), stroke.center[1] + stroke.radius * Math.sin(angle)];
  });
}

function distance(stroke: Stroke, [x, y]: Point): number {
  if (stroke.kind === 'path') {
    const { points, closed } = stroke;
    const sides = closed ? points.length : points.length - 1;
    let least = Infinity;
    for (let i = 0; i < sides; i++) {
      const [[x0, y0], [x1, y1]] = [points[i]!, points[(i + 1) % points.length]!];
      const [ux, uy] = [x1 - x0, y1 - y0];
      const share = Math.min(1, Math.max(0, ((x - x0) * ux + (y - y0) * uy) / (ux * ux + uy * uy || 1)));
      least = Math.min(least, Math.hypot(x - x0 - share * ux, y - y0 - share * uy));
    }
    return least;
  }
  const [dx, dy] = [x - stroke.center[0], y - stroke.center[1]];
  const off = Math.abs(Math.hypot(dx, dy) - stroke.radius);
  if (stroke.kind === 'circle') return off;
  const angle = (Math.atan2(dy, dx) * 180) / Math.PI;
  const past = (((angle - stroke.from) % 360) + 360) % 360;
  if (past <= stroke.to - stroke.from) return off;
  return Math.min(...endsOf(stroke).map(([u, v]) => Math.hypot(u - x, v - y)));
}
