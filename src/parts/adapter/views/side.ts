import { cosd, sind } from '../../../solid/angles.js';
import { fastenerThread } from '../../../standards/fasteners/sizes.js';
import { raySection } from '../../common/drawn/ray-section.js';
import { beyond, line } from '../../common/drawn/strokes.js';
import type { DrawnView, Point, Stroke } from '../../part-views.js';
import { type PlateInSight, patternsOf, placed, spanOf } from './in-sight.js';
import { piecesOf } from './pieces.js';
import { sideSizes } from './sizes.js';

/** The section along two rays: through a hole of the nut above the axis, through one of the carriage below. */
export function sideView(sight: PlateInSight): DrawnView {
  const pieces = piecesOf(sight);
  const halves = ([1, -1] as const).map((side, i) => {
    const { regions, lines } = raySection(pieces, sight.cut[i]!);
    const onPaper = ([z, r]: Point): Point => [-z, side * r];
    return {
      hatched: regions.map((region) => [region.map(onPaper)]),
      strokes: lines.map(([a, b]) => line('outline', onPaper(a), onPaper(b))),
    };
  });
  const lengths = pieces.filter(({ adds }) => adds);
  const [low, high] = [Math.min(...lengths.map(({ from }) => from)), Math.max(...lengths.map(({ to }) => to))];
  const out = beyond(sight.top);
  return {
    title: 'Section A–A',
    strokes: [
      ...halves.flatMap(({ strokes }) => strokes),
      ...holeAxes(sight, out),
      line('centre', [out - low, 0], [-out - high, 0]),
    ],
    hatched: halves.flatMap(({ hatched }) => hatched),
    sizes: sideSizes(sight, halves.map(({ strokes }) => reachOf(strokes)) as [number, number]),
    letters: [],
  };
}

/** How far lines reach from the axis. */
function reachOf(strokes: readonly Stroke[]): number {
  return Math.max(...strokes.flatMap((one) => (one.kind === 'path' ? one.points.map(([, y]) => Math.abs(y)) : [])));
}

/** Centre lines of the holes that the section goes through, and their threads as thin lines by ISO 6410. */
function holeAxes({ plate, print, cut, top }: PlateInSight, out: number): Stroke[] {
  return ([1, -1] as const).flatMap((side, i) =>
    patternsOf(plate).flatMap(([, holes]) =>
      holes.centres.flatMap((centre): Stroke[] => {
        const [x, y] = placed(centre, print);
        const r = Math.hypot(x, y);
        const off = Math.hypot(x - r * cosd(cut[i]!), y - r * sind(cut[i]!));
        if (off > 1e-3) return [];
        const { joint, screw } = holes.hole;
        const [low, high] = spanOf(holes, print);
        const thread =
          joint === 'tapped' && screw ? [-1, 1].map((k) => r + (k * fastenerThread(screw).diameter) / 2) : [];
        return [
          line('centre', [out, side * r], [-top - out, side * r]),
          ...thread.map((at) => line('thin', [-low, side * at], [-high, side * at])),
        ];
      }),
    ),
  );
}
