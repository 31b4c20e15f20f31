import type { Point, SizeMark } from '../../parts/part-views.js';
import { xmlText } from '../xml-text.js';
import { leaderTags, riserTags } from './leaders.js';
import type { PlacedView } from './sheet-layout.js';
import { FIGURE, sizeText } from './size-text.js';
import { arrowTag, lineTag, textTag } from './svg.js';
import { STRAIGHT, type Straight, type Tiered, tiersOn } from './tiers.js';
import { NEXT_TIER } from './zones.js';

/** Extension lines start clear of the part and end past the dimension line. */
const CLEAR = 0.8;
const PAST = 1.5;

/**
 * The dimensions of a view by ISO 129: extension lines, dimension lines with arrows, text above the line, smaller ones
 * nearer to the view.
 */
export function dimensionTags(placed: PlacedView): string[] {
  const { view, scale } = placed;
  return [
    ...STRAIGHT.flatMap((side) =>
      tiersOn(view.sizes, side, scale).flatMap((tiered) => straightTags(tiered, side, placed)),
    ),
    ...leaderTags(placed, sizeTag),
    ...riserTags(placed, sizeTag),
  ];
}

function straightTags(
  { mark, tier, ends, line, text, over, squeezed }: Tiered,
  side: Straight,
  placed: PlacedView,
): string[] {
  const { at: onPaper, box, start } = placed;
  const lying = side === 'below' || side === 'above';
  const outwards = side === 'below' || side === 'right' ? 1 : -1;
  const [low, high, origin] = [onPaper(box.min), onPaper(box.max), onPaper([0, 0])];
  const past = over ? 0 : PAST;
  const away = start[side] + NEXT_TIER * tier;
  const edge = { below: low[1], above: high[1], left: low[0], right: high[0] }[side] + outwards * away;
  const onLine = (along: number): Point => (lying ? [origin[0] + along, edge] : [edge, origin[1] - along]);
  const extension = (point: Point): string => {
    const from = onPaper(point);
    return lying
      ? lineTag('t', [from[0], from[1] + outwards * CLEAR], [from[0], edge + outwards * past])
      : lineTag('t', [from[0] + outwards * CLEAR, from[1]], [edge + outwards * past, from[1]]);
  };
  const [a, b] = [onLine(ends[0]), onLine(ends[1])];
  const [x, y] = onLine((text[0] + text[1]) / 2);
  return [
    extension(mark.from),
    extension(mark.to),
    lineTag('t', onLine(line[0]), onLine(line[1])),
    arrowTag(a, b, squeezed),
    arrowTag(b, a, squeezed),
    sizeTag(mark, lying ? [x, y - 0.8] : [x - 0.8, y], { turn: lying ? 0 : 90, anchor: 'middle' }),
  ];
}

/** The text of a size; it carries the size's name. */
function sizeTag(mark: SizeMark, place: Point, how: { turn: number; anchor: 'start' | 'middle' }): string {
  return textTag(sizeText(mark), { at: place, height: FIGURE, ...how, more: ` data-size="${xmlText(mark.name)}"` });
}
