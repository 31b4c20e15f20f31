import { socketCapScrew } from '../../../standards/fasteners/cap-screw.js';
import { hexNut } from '../../../standards/fasteners/nuts.js';
import { fastenerThread } from '../../../standards/fasteners/sizes.js';
import { washer } from '../../../standards/fasteners/washer.js';
import { clampAxesAlong } from '../../common/drawn/clamp-axes.js';
import { beyond, box, crossing } from '../../common/drawn/strokes.js';
import type { AskedView, CuttingPlane, Stroke } from '../../part-views.js';
import type { CollarInSight } from './in-sight.js';

/** Both halves cut across the axis through their first clamp screws, which are seen whole across the joint. */
export function acrossView({ plan, shapes, radius }: CollarInSight): AskedView {
  const { clamp } = plan;
  return {
    title: 'Section A–A, the joint',
    solid: { bodies: shapes, sight: { kind: 'across', height: clamp.heights[0]! } },
    strokes: [
      ...crossing([0, 0], radius + beyond(radius)),
      ...clampAxesAlong(clamp, radius),
      ...clampAxesAlong(clamp, radius, -1),
      ...([1, -1] as const).flatMap((side) => screwStrokes(plan.clamp, side)),
    ],
    sizes: [],
    letters: [],
  };
}

/** Where that cut lies in the joint's view. */
export function acrossPlanes({ plan, radius }: CollarInSight): CuttingPlane[] {
  const x = -plan.clamp.heights[0]!;
  return ([1, -1] as const).map((way) => ({ letter: 'A', at: [x, way * radius], away: [0, way], look: [1, 0] }));
}

/** Head, shank and nut of a clamp screw, with their washers; that on −X is the same turned half round. */
function screwStrokes({ screw, offset, headSeat, nutSeat, washers, screwLength }: Clamp, side: 1 | -1): Stroke[] {
  const { headDiameter, headHeight } = socketCapScrew(screw);
  const { acrossFlats, height } = hexNut(screw);
  const under = washers ? washer(screw).thickness : 0;
  const seat = -headSeat - under;
  const piece = (wide: number, from: number, to: number): Stroke =>
    box('thin', [side * (offset - wide / 2), side * from], [side * (offset + wide / 2), side * to]);
  return [
    piece(headDiameter, seat - headHeight, seat),
    piece(fastenerThread(screw).diameter, seat, seat + screwLength),
    piece((2 * acrossFlats) / Math.sqrt(3), nutSeat + under, nutSeat + under + height),
    ...(washers
      ? [piece(washer(screw).outside, seat, -headSeat), piece(washer(screw).outside, nutSeat, nutSeat + under)]
      : []),
  ];
}

type Clamp = CollarInSight['plan']['clamp'];
