import type { Letter, LineKind, Point, Stroke } from '../../parts/part-views.js';
import type { PlacedView } from './sheet-layout.js';
import { at, num, textTag, textWidth } from './svg.js';
import { TITLE_HEIGHT } from './zones.js';

const CLASSES: Readonly<Record<LineKind, string>> = { outline: 'o', thin: 't', hidden: 'h', centre: 'c' };

/** Hatching, lines and letters of a view. */
export function viewTags({ view, at: onPaper, box, beside, scale }: PlacedView): string[] {
  const middle = onPaper([(box.min[0] + box.max[0]) / 2, box.max[1]]);
  return [
    ...view.hatched.map((loops) => hatchTag('m', loops, onPaper)),
    ...(view.crossHatched ?? []).map((loops) => hatchTag('m n', loops, onPaper)),
    ...view.strokes.map((stroke) => strokeTag(stroke, onPaper, scale)),
    ...letterTags(view.letters, onPaper),
    // above whatever stands on the view's upper side
    textTag(view.title, {
      at: [middle[0], middle[1] - beside.above - 4],
      height: TITLE_HEIGHT,
      anchor: 'middle',
    }),
  ];
}

function hatchTag(className: string, loops: readonly (readonly Point[])[], onPaper: (point: Point) => Point): string {
  const data = loops.map((loop) => pathData(loop.map(onPaper), true)).join('');
  return `<path class="${className}" d="${data}"/>`;
}

/** Letters; small ones that would lie over one before are left out. */
function letterTags(letters: readonly Letter[], onPaper: PlacedView['at']): string[] {
  const taken: Point[] = [];
  return letters.flatMap(({ at: point, text, away, small }) => {
    const [x, y] = onPaper(point);
    const isLarge = Math.hypot(...away) > 0 && !small;
    const [height, clear] = isLarge ? [3.5, 3] : [2, 2.2];
    const place: Point = [x + clear * away[0], y - clear * away[1] + height / 2];
    const width = textWidth(text, height);
    if (small && taken.some(([u, v]) => Math.abs(u - place[0]) < width && Math.abs(v - place[1]) < height)) return [];
    taken.push(place);
    return [textTag(text, { at: place, height, anchor: 'middle', bold: isLarge })];
  });
}

function strokeTag(stroke: Stroke, onPaper: (point: Point) => Point, scale: number): string {
  const className = CLASSES[stroke.line];
  if (stroke.kind === 'path') {
    return `<path class="${className}" d="${pathData(stroke.points.map(onPaper), stroke.closed === true)}"/>`;
  }
  const [x, y] = onPaper(stroke.center);
  const r = scale * stroke.radius;
  if (stroke.kind === 'circle') return `<circle class="${className}" cx="${num(x)}" cy="${num(y)}" r="${num(r)}"/>`;
  const [from, to] = [stroke.from, stroke.to].map((degrees): Point => {
    const angle = (degrees * Math.PI) / 180;
    return [x + r * Math.cos(angle), y - r * Math.sin(angle)];
  }) as [Point, Point];
  const large = stroke.to - stroke.from > 180 ? 1 : 0;
  return `<path class="${className}" d="M${at(from)}A${num(r)} ${num(r)} 0 ${large} 0 ${at(to)}"/>`;
}

function pathData(points: readonly Point[], closed: boolean): string {
  return `M${points.map(at).join('L')}${closed ? 'Z' : ''}`;
}
