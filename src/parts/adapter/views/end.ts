import { outlineBounds } from '../../../solid/convex.js';
import { fastenerThread } from '../../../standards/fasteners/sizes.js';
import { rayReach } from '../../common/drawn/along-ray.js';
import { flipped } from '../../common/drawn/flipped.js';
import { angleOf, circleSeen, circleThrough } from '../../common/drawn/hole-circle.js';
import { sectionPlanes } from '../../common/drawn/section-planes.js';
import { arc, beyond, crossing, line } from '../../common/drawn/strokes.js';
import { polar, rectangleOf } from '../../common/hole-pattern.js';
import { pocketRadius } from '../../common/joints.js';
import type { AskedView, Letter, Point, Stroke } from '../../part-views.js';
import type { PatternHoles } from '../plan.js';
import { holeDiameter, type PlateInSight, patternsOf, placed } from './in-sight.js';
import { endSizes } from './sizes.js';

/** Whether the carriage's face has something that the outer face does not show. */
export function hasOwnCarriageFace({ plate }: PlateInSight): boolean {
  const isLow = ({ opens, pocket, blind }: PatternHoles) =>
    opens === 'low' && (pocket !== undefined || blind !== undefined);
  return (
    plate.innerStep !== undefined || plate.rim !== undefined || patternsOf(plate).some(([, holes]) => isLow(holes))
  );
}

/** One face of the plate: the outer one, or the carriage's seen from −Z, where +X lies to the left. */
export function faceView(sight: PlateInSight, face: 'high' | 'low'): AskedView {
  const { plate, outline, cut } = sight;
  const hasBoth = hasOwnCarriageFace(sight);
  const { min, max } = outlineBounds(outline);
  const out = beyond(Math.min(max[0], max[1]));
  const strokes: Stroke[] = [
    ...patternsOf(plate).flatMap(([, holes]) => holeAxes(holes, sight, face)),
    line('centre', [min[0] - out, 0], [max[0] + out, 0]),
    line('centre', [0, min[1] - out], [0, max[1] + out]),
  ];
  const rays = cut.map((angle) => polar(rayReach(outline, angle), angle));
  return {
    title: face === 'high' ? 'Outer face' : 'Face to the carriage',
    solid: {
      bodies: [sight.shape],
      sight: { kind: 'end', from: face === 'high' ? 1 : -1 },
      // what opens on the other face is hidden here, where no view shows that face
      hidden: hasBoth ? ['blind'] : ['blind', 'pocket'],
    },
    strokes: face === 'high' ? [...strokes, ...rays.map((end) => line('centre', [0, 0], end))] : flipped(strokes),
    sizes: endSizes(sight, face, hasBoth),
    ...(face === 'high' ? { planes: sectionPlanes(cut, (angle) => rayReach(outline, angle)) } : {}),
    letters: [
      ...patternsOf(plate).flatMap(([letter, holes]) => numbersOf(letter, holes, sight, face)),
      ...(face === 'high' ? cutoutNumbers(sight) : []),
    ],
  };
}

/** Centre lines of a pattern, and the threads of its tapped holes by ISO 6410: three quarters of a thin circle. */
function holeAxes(holes: PatternHoles, { print, outline }: PlateInSight, face: 'high' | 'low'): Stroke[] {
  const { centres, opens, hole } = holes;
  const radius = holeDiameter(holes, print) / 2;
  const circle = circleThrough(centres);
  return [
    ...centres.flatMap((centre): Stroke[] => {
      const at = placed(centre, print);
      const thread =
        hole.joint === 'tapped' && hole.screw && opens === face ? fastenerThread(hole.screw).diameter / 2 : 0;
      return [...(thread > 0 ? [arc('thin', at, thread, 95, 355)] : []), ...crossing(at, radius + beyond(2 * radius))];
    }),
    ...(circle && !rectangleOf(holes) ? circleSeen(centres, print.across(circle), outline) : []),
  ];
}

/** Numbers in the cut-outs, as in the hole table and the notes. */
function cutoutNumbers({ plate: { cutouts }, print }: PlateInSight): Letter[] {
  return cutouts.map(({ at }, i) => ({ at: placed(at, print), text: `X${i + 1}`, away: [0, 0], small: true }));
}

/** Numbers beside the holes, as in the hole table. */
function numbersOf(letter: string, holes: PatternHoles, { print }: PlateInSight, face: 'high' | 'low'): Letter[] {
  const { centres, pocket, opens } = holes;
  const open = pocket && opens === face ? print.inside(2 * pocketRadius(pocket)) / 2 : holeDiameter(holes, print) / 2;
  return centres.map((centre, i) => {
    const [x, y] = placed(centre, print);
    const angle = face === 'low' ? 180 - angleOf(centre) : angleOf(centre);
    const at: Point = [face === 'low' ? -x : x, y];
    return { at, text: `${letter}${i + 1}`, away: polar(1, angle + 40), around: open, small: true };
  });
}
