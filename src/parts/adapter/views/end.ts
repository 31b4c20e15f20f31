import { outlineBounds } from '../../../solid/convex.js';
import type { Outline } from '../../../solid/outline.js';
import { fastenerThread } from '../../../standards/fasteners/sizes.js';
import { flatArea } from '../../common/drawn/flat-area.js';
import { flipped } from '../../common/drawn/flipped.js';
import { alongRay } from '../../common/drawn/ray-section.js';
import { arc, beyond, crossing, line, loop, ring } from '../../common/drawn/strokes.js';
import { polar } from '../../common/hole-pattern.js';
import { type Pocket, pocketRadius } from '../../common/joints.js';
import type { DrawnView, Letter, Point, Stroke } from '../../part-views.js';
import { cutoutOutline, keyOutline, type PatternHoles } from '../plan.js';
import { angleOf, circleThrough, holeDiameter, type PlateInSight, patternsOf, placed } from './in-sight.js';
import { catchOutline, pocketSeen } from './pieces.js';
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
export function faceView(sight: PlateInSight, face: 'high' | 'low'): DrawnView {
  const { plate, print, outline, cut } = sight;
  const cutouts = plate.cutouts.map((cutout) => cutoutOutline(cutout, print));
  const { min, max } = outlineBounds(outline);
  const out = beyond(Math.min(max[0], max[1]));
  const strokes: Stroke[] = [
    ...flatArea([outline], cutouts).map((one) => loop('outline', one)),
    ...middleSeen(sight, face),
    ...patternsOf(plate).flatMap(([, holes]) => holesSeen(holes, sight, face)),
    line('centre', [min[0] - out, 0], [max[0] + out, 0]),
    line('centre', [0, min[1] - out], [0, max[1] + out]),
  ];
  const rays = cut.map((angle) => polar((alongRay(outline, angle).at(-1)?.[1] ?? max[0]) + 1, angle));
  return {
    title: face === 'high' ? 'Outer face' : 'Face to the carriage',
    strokes: face === 'high' ? [...strokes, ...rays.map((end) => line('centre', [0, 0], end))] : flipped(strokes),
    hatched: [],
    sizes: endSizes(sight, face, hasOwnCarriageFace(sight)),
    letters: [
      ...(face === 'high' ? rays.map((at, i): Letter => ({ at, text: 'A', away: polar(1, cut[i]!) })) : []),
      ...patternsOf(plate).flatMap(([letter, holes]) => numbersOf(letter, holes, sight, face)),
    ],
  };
}

/** Bore, sinks, ring and keys in the middle. */
function middleSeen(sight: PlateInSight, face: 'high' | 'low'): Stroke[] {
  const { plate, print } = sight;
  const { bore, outerStep, innerStep, rim, keys, catchPocket } = plate;
  const step = face === 'high' ? outerStep : innerStep;
  return [
    ring('outline', [0, 0], print.inside(bore) / 2),
    ...(step ? [ring('outline', placed(step.center, print), print.inside(step.diameter) / 2)] : []),
    ...(face === 'high' ? keys.map((key) => loop('outline', keyOutline(key, print))) : []),
    ...(face === 'high' && catchPocket ? [loop('outline', catchOutline(sight))] : []),
    ...(face === 'low' && rim
      ? [
          ring('outline', placed(rim.center, print), print.outside(rim.outer) / 2),
          ...(rim.inner > bore ? [ring('outline', placed(rim.center, print), print.inside(rim.inner) / 2)] : []),
        ]
      : []),
  ];
}

/** Holes of a pattern; what does not reach this face is hidden. */
function holesSeen(holes: PatternHoles, { print, outline }: PlateInSight, face: 'high' | 'low'): Stroke[] {
  const { centres, pocket, opens, blind, hole } = holes;
  const kind = blind !== undefined && opens !== face ? 'hidden' : 'outline';
  const radius = holeDiameter(holes, print) / 2;
  const circle = circleThrough(centres);
  return [
    ...centres.flatMap((centre): Stroke[] => {
      const at = placed(centre, print);
      const open = pocket && opens === face ? [pocketStroke(pocket, at, print.inside)] : [];
      const thread =
        hole.joint === 'tapped' && hole.screw && opens === face ? fastenerThread(hole.screw).diameter / 2 : 0;
      return [
        ring(kind, at, radius),
        // ISO 6410: three quarters of a thin circle
        ...(thread > 0 ? [arc('thin', at, thread, 95, 355)] : []),
        ...open,
        ...crossing(at, radius + beyond(2 * radius)),
      ];
    }),
    ...(circle ? circleSeen(centres, print.across(circle), outline) : []),
  ];
}

/** The circle that holes stand on; where the plate does not hold all of it, a piece about each hole. */
function circleSeen(centres: readonly Point[], radius: number, outline: Outline): Stroke[] {
  const { min, max } = outlineBounds(outline);
  if (Math.min(-min[0], -min[1], ...max) > radius) return [ring('centre', [0, 0], radius)];
  return centres.map((centre) => arc('centre', [0, 0], radius, angleOf(centre) - 16, angleOf(centre) + 16));
}

function pocketStroke(pocket: Pocket, at: Point, inside: (size: number) => number): Stroke {
  if (pocket.kind === 'round') return ring('outline', at, inside(pocket.diameter) / 2);
  return loop('outline', pocketSeen(pocket, at, inside));
}

/** Numbers beside the holes, as in the hole table. */
function numbersOf(letter: string, holes: PatternHoles, { print }: PlateInSight, face: 'high' | 'low'): Letter[] {
  const { centres, pocket, opens } = holes;
  const open = pocket && opens === face ? print.inside(2 * pocketRadius(pocket)) / 2 : holeDiameter(holes, print) / 2;
  return centres.map((centre, i) => {
    const [x, y] = placed(centre, print);
    const angle = face === 'low' ? 180 - angleOf(centre) : angleOf(centre);
    const [away, [dx, dy]] = [polar(1, angle + 40), polar(open, angle + 40)];
    return { at: [(face === 'low' ? -x : x) + dx, y + dy], text: `${letter}${i + 1}`, away, small: true };
  });
}
