import { line } from '../../common/drawn/strokes.js';
import type { LineKind, Point, Stroke } from '../../part-views.js';

/** An upright box in a view: its extents on paper, and how near to the viewer its front lies. */
export interface SeenBox {
  readonly min: Point;
  readonly max: Point;
  readonly near: number;
}

type Edge = readonly [Point, Point];

/** Edges of boxes seen from one side; what nearer boxes hide is drawn hidden, what lies on their edges not at all. */
export function boxesSeen(boxes: readonly SeenBox[]): Stroke[] {
  return boxes.flatMap((box, i) => {
    const nearer = boxes.filter((other, k) => other.near > box.near || (other.near === box.near && k < i));
    return edgesOf(box).flatMap((edge) => pieces(edge, nearer));
  });
}

function edgesOf({ min: [x0, y0], max: [x1, y1] }: SeenBox): Edge[] {
  return [
    [
      [x0, y0],
      [x1, y0],
    ],
    [
      [x0, y1],
      [x1, y1],
    ],
    [
      [x0, y0],
      [x0, y1],
    ],
    [
      [x1, y0],
      [x1, y1],
    ],
  ];
}

/** An edge cut at the sides of what stands before it, each piece drawn as it is seen. */
function pieces([from, to]: Edge, nearer: readonly SeenBox[]): Stroke[] {
  const along = from[1] === to[1] ? 0 : 1;
  const stops = [from[along], to[along], ...nearer.flatMap(({ min, max }) => [min[along], max[along]])]
    .filter((at) => at >= from[along] && at <= to[along])
    .sort((a, b) => a - b);
  return stops.slice(1).flatMap((end, i): Stroke[] => {
    const start = stops[i]!;
    if (end - start < 1e-9) return [];
    const at = (value: number): Point => (along === 0 ? [value, from[1]] : [from[0], value]);
    const kind = kindAt(at((start + end) / 2), along, nearer);
    return kind ? [line(kind, at(start), at(end))] : [];
  });
}

function kindAt(middle: Point, along: 0 | 1, nearer: readonly SeenBox[]): LineKind | undefined {
  const across = along === 0 ? 1 : 0;
  const over = nearer.filter(({ min, max }) => middle[along] > min[along] && middle[along] < max[along]);
  const at = middle[across];
  if (over.some(({ min, max }) => at > min[across] && at < max[across])) return 'hidden';
  return over.some(({ min, max }) => at === min[across] || at === max[across]) ? undefined : 'outline';
}
