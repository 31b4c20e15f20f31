import type { Point } from '../../parts/part-views.js';
import { RISER_CLEAR, RISER_PITCH } from './bands.js';
import { arrowInk, type Ink, lineInk } from './ink.js';
import type { PlacedView } from './placed-view.js';
import { OVER_LINE, sizeInk, sizeWidth } from './size-text.js';

/** Lines up from features in a row, each with its text along it above the view, moved aside where they crowd. */
export function risersInk({ view, box, at: onPaper }: PlacedView): Ink[] {
  const top = onPaper(box.max)[1];
  const marks = view.sizes.filter(({ side }) => side === 'riser').sort((a, b) => a.to[0] - b.to[0]);
  const places = spaced(marks.map(({ to }) => onPaper(to)[0]));
  return marks.flatMap((mark, i) => {
    const tip = onPaper(mark.to);
    const [x, start] = [places[i]!, top - RISER_CLEAR];
    const knee: Point = [tip[0], top - 0.5];
    const end: Point = [x, start - sizeWidth(mark)];
    return [
      lineInk('narrow', tip, knee),
      lineInk('narrow', knee, [x, start]),
      lineInk('narrow', [x, start], end),
      arrowInk(tip, knee, false),
      sizeInk(mark, { at: [x - OVER_LINE, start], turn: 90, anchor: 'start' }),
    ];
  });
}

/** Rising places moved as little as it takes to stand clear of each other. */
function spaced(places: readonly number[]): number[] {
  const moved: number[] = [];
  for (const place of places) moved.push(Math.max(place, (moved.at(-1) ?? Number.NEGATIVE_INFINITY) + RISER_PITCH));
  const late = moved.reduce((sum, place, i) => sum + place - places[i]!, 0) / Math.max(1, moved.length);
  return moved.map((place) => place - late);
}
