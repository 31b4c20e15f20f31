import { outlineBounds } from '../../../solid/convex.js';
import { arc, beyond, crossing, line, loop, ring } from '../../common/drawn/strokes.js';
import type { DrawnView, Point, SizeMark, Stroke } from '../../part-views.js';
import type { Opening, Plate } from '../strip.js';
import { boxesSeen, type SeenBox } from './boxes-seen.js';

/** A plate seen from above, its marks as letters. */
export function plateFromAbove(
  { outline, columns, marks }: Plate,
  title: string,
  sizes: readonly SizeMark[],
): DrawnView {
  return {
    title,
    strokes: [
      loop('outline', outline),
      ...columns.flatMap(({ outline: wall, opening }) => [
        loop('outline', wall),
        ...(opening ? openingSeen(opening) : []),
        ...(wall.length > 4 ? axesOf(wall) : []),
      ]),
    ],
    hatched: [],
    sizes,
    letters: marks.map(({ text, at }) => ({ at, text, away: [0, 0], small: true })),
  };
}

/** A thread by ISO 6410: its crests as a full circle, its roots as three quarters of a thin one. */
function openingSeen(opening: Opening): Stroke[] {
  if (opening.kind === 'plain') return [loop('outline', opening.outline)];
  const { center, minor, major } = opening;
  return [ring('outline', center, minor / 2), arc('thin', center, major / 2, 95, 355)];
}

/** Centre lines of something round. */
function axesOf(wall: Plate['outline']): Stroke[] {
  const { min, max } = outlineBounds(wall);
  const half = (max[0] - min[0]) / 2;
  return crossing([(min[0] + max[0]) / 2, (min[1] + max[1]) / 2], half + beyond(half));
}

/** A plate with what stands on it, seen from +X: +Z to the left. */
export function plateFromRight({ outline, thickness, columns }: Plate, sizes: readonly SizeMark[]): DrawnView {
  const box = (wall: Plate['outline'], from: number, to: number): SeenBox => {
    const { min, max } = outlineBounds(wall);
    return { min: [-to, min[1]], max: [-from, max[1]], near: max[0] };
  };
  const tall = columns.filter(({ height }) => height > thickness);
  const round = tall.filter(({ outline: wall }) => wall.length > 4);
  return {
    title: 'Seen from +X',
    strokes: [
      ...boxesSeen([box(outline, 0, thickness), ...tall.map((one) => box(one.outline, thickness, one.height))]),
      ...round.slice(0, 1).map(({ outline: wall, height }) => {
        const { min, max } = outlineBounds(wall);
        const y = (min[1] + max[1]) / 2;
        return line('centre', [beyond(height), y], [-height - beyond(height), y]);
      }),
    ],
    hatched: [],
    sizes,
    letters: [],
  };
}

/** The uppermost point of what is measured at a station: of its opening, or of what stands there. */
export function topOf(plate: Plate, station: number): Point {
  const { outline, opening } = plate.columns[station]!;
  if (opening?.kind === 'thread') return [opening.center[0], opening.center[1] + opening.minor / 2];
  const { min, max } = outlineBounds(opening?.outline ?? outline);
  return [(min[0] + max[0]) / 2, max[1]];
}
