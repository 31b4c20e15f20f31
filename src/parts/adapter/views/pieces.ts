import { movedSides } from '../../../solid/convex-loft.js';
import { hexagonOutline, type Outline } from '../../../solid/outline.js';
import { nutPocketOutline } from '../../common/bought-nut.js';
import type { Piece } from '../../common/drawn/ray-section.js';
import { turned } from '../../common/hole-pattern.js';
import type { Pocket } from '../../common/joints.js';
import type { Point } from '../../part-views.js';
import { cutoutOutline, keyOutline, type PatternHoles, type Step } from '../plan.js';
import { angleOf, disc, holeDiameter, type PlateInSight, patternsOf, placed, spanOf } from './in-sight.js';

/** What a plate is put together from and what is cut out of it, for its section. */
export function piecesOf(sight: PlateInSight): Piece[] {
  const { plate, print, top } = sight;
  const cut = (outline: Outline, from: number, to: number): Piece => ({ adds: false, outline, from, to });
  const sunk = (step: Step | undefined, high: boolean): Piece[] => {
    if (!step) return [];
    const depth = print.along(step.depth);
    const outline = disc(print.inside(step.diameter), placed(step.center, print));
    return [high ? cut(outline, top - depth, top) : cut(outline, 0, depth)];
  };
  const { catchPocket } = plate;
  return [
    slabOf(sight),
    ...rimOf(sight),
    ...plate.keys.map((key): Piece => {
      return { adds: true, outline: keyOutline(key, print), from: top, to: top + print.along(key.height) };
    }),
    boreOf(sight),
    ...sunk(plate.outerStep, true),
    ...sunk(plate.innerStep, false),
    ...(catchPocket ? [cut(catchOutline(sight), top - print.along(catchPocket.depth), top)] : []),
    ...patternsOf(plate).flatMap(([, holes]) => holesOf(holes, sight)),
    ...plate.cutouts.map((cutout) => cut(cutoutOutline(cutout, print), 0, top)),
  ];
}

/** The slab with its chamfer on the bed. */
function slabOf({ outline, top, relief, bed }: PlateInSight): Piece {
  if (relief === 0) return { adds: true, outline, from: 0, to: top };
  const height = (z: number) => (bed === 'carriage' ? z : top - z);
  return {
    adds: true,
    outline: (z) => movedSides(outline, Math.min(0, height(z) - relief)),
    from: 0,
    to: top,
    bends: [bed === 'carriage' ? relief : top - relief],
  };
}

function rimOf({ plate: { rim, bore }, print }: PlateInSight): Piece[] {
  if (!rim) return [];
  const [center, low] = [placed(rim.center, print), -print.along(rim.height)];
  const ring: Piece = { adds: true, outline: disc(print.outside(rim.outer), center), from: low, to: 0 };
  if (rim.inner <= bore) return [ring];
  return [ring, { adds: false, outline: disc(print.inside(rim.inner), center), from: low, to: 0 }];
}

/** The bore, chamfered where it opens plainly on the bed. */
function boreOf({ plate, print, top, bed }: PlateInSight): Piece {
  const { rim, relief, outerStep, innerStep, catchPocket } = plate;
  const low = rim && rim.inner <= plate.bore ? -print.along(rim.height) : 0;
  const diameter = print.inside(plate.bore);
  const isStepped = bed === 'outside' ? outerStep || catchPocket : innerStep || rim;
  if (isStepped || relief === 0) return { adds: false, outline: disc(diameter, [0, 0]), from: low, to: top };
  const height = (z: number) => (bed === 'carriage' ? z : top - z);
  return {
    adds: false,
    outline: (z) => disc(diameter + 2 * Math.max(0, relief - height(z)), [0, 0]),
    from: low,
    to: top,
    bends: [bed === 'carriage' ? relief : top - relief],
  };
}

function holesOf(holes: PatternHoles, { print }: PlateInSight): Piece[] {
  const { centres, pocket, opens } = holes;
  const [low, high] = spanOf(holes, print);
  const diameter = holeDiameter(holes, print);
  return centres.flatMap((centre): Piece[] => {
    const at = placed(centre, print);
    const bore: Piece = { adds: false, outline: disc(diameter, at), from: low, to: high };
    if (!pocket) return [bore];
    const depth = print.along(pocket.depth);
    const [from, to] = opens === 'high' ? [high - depth, high] : [low, low + depth];
    return [bore, { adds: false, outline: pocketSeen(pocket, at, print.inside), from, to }];
  });
}

/** A pocket in the plan; a hexagon turns with the direction of its hole from the axis. */
export function pocketSeen(pocket: Pocket, center: Point, inside: (size: number) => number): Outline {
  if (pocket.kind === 'round') return disc(inside(pocket.diameter), center);
  return hexagonOutline({ acrossFlats: inside(pocket.acrossFlats), center, turn: angleOf(center) + 30 });
}

/** The pocket of a catch nut in the plan. */
export function catchOutline({ plate: { catchPocket }, print }: PlateInSight): Outline {
  const { shape, acrossFlats, turn } = catchPocket!;
  return nutPocketOutline({ shape }, print.inside(acrossFlats)).map((corner) => turned(corner, turn));
}
