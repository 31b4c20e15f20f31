import type { DrawnView, LineKind, Point, Stroke } from '../../parts/part-views.js';
import { TITLE_HEIGHT } from './bands.js';
import { cuttingPlanesInk } from './cutting-planes.js';
import { hatchInk } from './hatch.js';
import { type Ink, type Pen, textInk } from './ink.js';
import { lettersInk } from './letters.js';
import type { PlacedView } from './placed-view.js';

const PENS: Readonly<Record<LineKind, Pen>> = { outline: 'wide', thin: 'narrow', hidden: 'hidden', centre: 'centre' };

/** Hatching, lines and letters of a view. */
export function viewInk(placed: PlacedView): Ink[] {
  const { view, at: onPaper } = placed;
  const hatched = (regions: DrawnView['hatched'], way: 1 | -1) =>
    regions.flatMap((loops) =>
      hatchInk(
        loops.map((loop) => loop.map(onPaper)),
        way,
      ),
    );
  return [...hatched(view.hatched, 1), ...hatched(view.crossHatched ?? [], -1), ...unhatchedInk(placed)];
}

/** Lines, letters and title of a view. */
export function unhatchedInk({ view, at: onPaper, box, beside, scale }: PlacedView): Ink[] {
  const middle = onPaper([(box.min[0] + box.max[0]) / 2, box.max[1]]);
  const lines = [...strokesInk({ view, at: onPaper, scale }), ...cuttingPlanesInk(view.planes ?? [], onPaper)];
  return [
    ...lines,
    ...lettersInk(view.letters, { onPaper, scale, lines }),
    // above whatever stands on the view's upper side
    textInk(view.title, {
      at: [middle[0], middle[1] - beside.above - 4],
      height: TITLE_HEIGHT,
      anchor: 'middle',
    }),
  ];
}

/** Lines of a view. */
export function strokesInk({ view, at, scale }: Pick<PlacedView, 'view' | 'at' | 'scale'>): Ink[] {
  return view.strokes.map((stroke) => strokeInk(stroke, at, scale));
}

function strokeInk(stroke: Stroke, onPaper: (point: Point) => Point, scale: number): Ink {
  const pen = PENS[stroke.line];
  if (stroke.kind === 'path') {
    const { points, closed = false } = stroke;
    return { kind: 'line', pen, points: points.map(onPaper), ...(closed ? { closed } : {}) };
  }
  const arc = { kind: 'arc', pen, center: onPaper(stroke.center), radius: scale * stroke.radius } as const;
  return stroke.kind === 'circle' ? { ...arc, from: 0, to: 360 } : { ...arc, from: stroke.from, to: stroke.to };
}
