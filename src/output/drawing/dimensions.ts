import type { Point } from '../../parts/part-views.js';
import { NEXT_TIER } from './bands.js';
import { arrowInk, type Ink, lineInk } from './ink.js';
import type { PlacedView } from './placed-view.js';
import { risersInk } from './risers.js';
import { OVER_LINE, sizeInk } from './size-text.js';
import { STRAIGHT, type Straight, type Tiered, tiersOn } from './tiers.js';

/** Extension lines start clear of the part and end past the dimension line. */
const CLEAR = 0.8;
const PAST = 1.5;

/**
 * The dimensions of a view by ISO 129, leaders aside: extension lines, dimension lines with arrows, text above the line,
 * smaller ones nearer to the view.
 */
export function dimensionsInk(placed: PlacedView): Ink[] {
  const { view, scale } = placed;
  return [
    ...STRAIGHT.flatMap((side) =>
      tiersOn(view.sizes, side, scale).flatMap((tiered) => straightInk(tiered, side, placed)),
    ),
    ...risersInk(placed),
  ];
}

function straightInk(
  { mark, tier, ends, line, text, over, squeezed }: Tiered,
  side: Straight,
  placed: PlacedView,
): Ink[] {
  const { at: onPaper, box, start } = placed;
  const lying = side === 'below' || side === 'above';
  const outwards = side === 'below' || side === 'right' ? 1 : -1;
  const [low, high, origin] = [onPaper(box.min), onPaper(box.max), onPaper([0, 0])];
  const past = over ? 0 : PAST;
  const away = start[side] + NEXT_TIER * tier;
  const edge = { below: low[1], above: high[1], left: low[0], right: high[0] }[side] + outwards * away;
  const onLine = (along: number): Point => (lying ? [origin[0] + along, edge] : [edge, origin[1] - along]);
  const extension = (point: Point): Ink => {
    const from = onPaper(point);
    return lying
      ? lineInk('narrow', [from[0], from[1] + outwards * CLEAR], [from[0], edge + outwards * past])
      : lineInk('narrow', [from[0] + outwards * CLEAR, from[1]], [edge + outwards * past, from[1]]);
  };
  const [a, b] = [onLine(ends[0]), onLine(ends[1])];
  const [x, y] = onLine((text[0] + text[1]) / 2);
  return [
    extension(mark.from),
    extension(mark.to),
    lineInk('narrow', onLine(line[0]), onLine(line[1])),
    arrowInk(a, b, squeezed),
    arrowInk(b, a, squeezed),
    sizeInk(mark, {
      at: lying ? [x, y - OVER_LINE] : [x - OVER_LINE, y],
      turn: lying ? 0 : 90,
      anchor: 'middle',
    }),
  ];
}
