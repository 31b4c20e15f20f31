import { outlineBounds } from '../../../solid/convex.js';
import type { Shape } from '../../../solid/recipe.js';
import { arc, beyond, crossing, line } from '../../common/drawn/strokes.js';
import type { AskedView, Point, SizeMark, Stroke } from '../../part-views.js';
import type { Opening, Plate } from '../strip.js';

/** A plate as a recipe, with what its views need besides. */
export interface PlateInSight {
  readonly plate: Plate;
  readonly shape: Shape;
}

/** A plate seen from above, its marks as letters. */
export function plateFromAbove(
  { plate: { columns, marks, outline }, shape }: PlateInSight,
  title: string,
  sizes: readonly SizeMark[],
): AskedView {
  return {
    title,
    solid: { bodies: [shape], sight: { kind: 'end', from: 1 } },
    strokes: columns.flatMap(({ outline: wall, opening }) => [
      ...(opening ? threadRoot(opening) : []),
      ...(wall.length > 4 ? axesOf(wall) : []),
    ]),
    sizes,
    origin: outlineBounds(outline).min,
    letters: marks.map(({ text, at }) => ({ at, text, away: [0, 0], small: true })),
  };
}

/** ISO 6410: the roots of a thread as three quarters of a thin circle. */
function threadRoot(opening: Opening): Stroke[] {
  return opening.kind === 'thread' ? [arc('thin', opening.center, opening.major / 2, 95, 355)] : [];
}

/** Centre lines of something round. */
function axesOf(wall: Plate['outline']): Stroke[] {
  const { min, max } = outlineBounds(wall);
  const half = (max[0] - min[0]) / 2;
  return crossing([(min[0] + max[0]) / 2, (min[1] + max[1]) / 2], half + beyond(half));
}

/** A plate with what stands on it, seen from +X: +Z to the left. */
export function plateFromRight({ plate, shape }: PlateInSight, sizes: readonly SizeMark[]): AskedView {
  const round = plate.columns.filter(({ height, outline }) => height > plate.thickness && outline.length > 4);
  return {
    title: 'Seen from +X',
    solid: { bodies: [shape], sight: { kind: 'side', upwards: 90 }, hidden: ['column'] },
    strokes: round.slice(0, 1).map(({ outline: wall, height }) => {
      const { min, max } = outlineBounds(wall);
      const y = (min[1] + max[1]) / 2;
      return line('centre', [beyond(height), y], [-height - beyond(height), y]);
    }),
    sizes,
    letters: [],
  };
}

/** The uppermost point of what is measured at a station: of its opening, or of what stands there. */
export function topOf(plate: Plate, station: number): Point {
  const { outline, opening } = plate.columns[station]!;
  if (opening?.kind === 'thread') return [opening.center[0], opening.center[1] + opening.minor / 2];
  return (opening?.outline ?? outline).reduce((best, point) => (point[1] > best[1] + 1e-9 ? point : best));
}
