import { cosd, sind } from '../../../solid/angles.js';
import { fastenerThread } from '../../../standards/fasteners/sizes.js';
import { beyond, line } from '../../common/drawn/strokes.js';
import type { AskedView, Stroke } from '../../part-views.js';
import { type PlateInSight, patternsOf, placed, spanOf } from './in-sight.js';
import { sideSizes } from './sizes.js';

/** The section along two rays: through a hole of the nut above the axis, through one of the carriage below. */
export function sideView(sight: PlateInSight): AskedView {
  const { plate, print, top, cut } = sight;
  const low = plate.rim ? -print.along(plate.rim.height) : 0;
  const high = top + Math.max(0, ...plate.keys.map(({ height }) => print.along(height)));
  const out = beyond(top);
  return {
    title: 'Section A–A',
    solid: { bodies: [sight.shape], sight: { kind: 'section', planes: cut } },
    strokes: [...holeAxes(sight, out), line('centre', [out - low, 0], [-out - high, 0])],
    sizes: sideSizes(sight),
    letters: [],
  };
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
