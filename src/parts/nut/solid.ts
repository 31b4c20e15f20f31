import { insideBy, outlineBounds } from '../../solid/convex.js';
import { type LoftLevel, loftVolume } from '../../solid/convex-loft.js';
import { circleOutline, type Outline, polygonArea } from '../../solid/outline.js';
import type { LoftRound, Shape } from '../../solid/recipe.js';
import { type Cut, holeCut, OVERSHOOT } from '../common/cut.js';
import { polar } from '../common/hole-pattern.js';
import { printSizes } from '../common/print-sizes.js';
import { threadBore } from '../common/thread-bore.js';
import { threadColumns } from '../common/thread-shape.js';
import type { Expected, PlannedBody } from '../part-kind.js';
import type { NutDesign, NutSizes } from './dimensions.js';
import { leastWallInFile } from './least-wall.js';
import { markShapes } from './mark.js';
import { bodyOutline, flangeOutline } from './plan.js';
import { boreOf, headRadius, openingRadius, pocketOf } from './pockets.js';
import { isMarked, pocketRoof, topFace } from './print-advice.js';
import { recessOf } from './variants/twin.js';

const UP_MARK = { depth: 0.4, radius: 1.1, clear: 0.5 };

/** The nut as a recipe, and what it must measure. */
export function nutBody(design: NutDesign): PlannedBody {
  const { printed, printer } = design;
  const hull = hullOf(printed, printer.chordError);
  const bore = boreCuts(design);
  const mark = markShapes(design);
  const cuts = [bore, ...holeCuts(design), ...upMark(design)];
  const solid: Shape = { kind: 'union', of: [...hull.shapes, ...mark.raised] };
  return {
    recipe: {
      name: design.name,
      material: design.material.name,
      shape: { kind: 'difference', of: [solid, ...cuts.map(({ shape }) => shape), ...mark.cut] },
    },
    expected: () => ({
      volume: hull.volume - mark.taken - cuts.reduce((sum, { volume }) => sum + volume, 0),
      mark: mark.leeway,
      bounds: hull.bounds,
    }),
    turnOver: topFace(design) === 'flange-face',
    printer,
    leastWall: leastWallInFile(design),
  };
}

/** Lowest and highest plane of the nut. The flange face lies on z = 0, a stub below it. */
export function endsOf({ length, flange }: NutSizes): { readonly bottom: number; readonly top: number } {
  const bottom = -(flange?.offset ?? 0);
  return { bottom, top: bottom + length };
}

/** Body and flange before anything is cut. */
export function hullOf(
  sizes: NutSizes,
  chordError: number,
): { shapes: Shape[]; volume: number; bounds: Expected['bounds'] } {
  const { flange, relief, fillet } = sizes;
  const { bottom, top } = endsOf(sizes);
  const body = bodyOutline(sizes.body, chordError);
  const upper: LoftLevel[] = [
    [top - relief, 0],
    [top, -relief],
  ];
  if (!flange) {
    const levels: LoftLevel[] = [[bottom, -relief], [bottom + relief, 0], ...upper];
    return {
      shapes: [loft(body, levels, [0, 2])],
      volume: loftVolume(body, levels),
      bounds: boundsOf(body, bottom, top),
    };
  }
  const plate = flangeOutline(flange, chordError);
  const plateLevels: LoftLevel[] = [
    [0, -relief],
    [relief, 0],
    [flange.thickness, 0],
  ];
  const corner = filletLevels(flange.thickness, fillet);
  const below: LoftLevel[] =
    flange.offset > 0
      ? [
          [bottom, -relief],
          [bottom + relief, 0],
        ]
      : [];
  const lower: LoftLevel[] = [...below, [flange.thickness / 2, 0]];
  const inside = corner.length > 0 ? approach(corner) : [];
  const above: LoftLevel[] = corner.length > 0 ? [...corner, ...upper] : [[flange.thickness, 0], ...upper];
  const stub = flange.offset > 0 ? loftVolume(body, [...below, [0, 0]]) : 0;
  const foot = [...lower, ...inside];
  const shaft = [...foot, ...corner.slice(1), ...upper];
  const [begins] = corner;
  const rounds = begins
    ? [
        {
          from: foot.length - 1,
          to: foot.length + corner.length - 2,
          arc: { begins, center: [flange.thickness + fillet, fillet] as const },
        },
      ]
    : [];
  return {
    shapes: [
      loft(plate, plateLevels, [0]),
      loft(body, shaft, [...(flange.offset > 0 ? [0] : []), shaft.length - 2], rounds),
    ],
    volume: loftVolume(plate, plateLevels) + loftVolume(body, above) + stub,
    bounds: boundsOf(plate, bottom, top),
  };
}

function loft(
  outline: Outline,
  levels: readonly LoftLevel[],
  broken: readonly number[],
  rounds: readonly LoftRound[] = [],
): Shape {
  return { kind: 'loft', outline, levels, broken, rounds };
}

/** A fillet in eight steps, from the flange's plane up to the body's wall. */
function filletLevels(plane: number, fillet: number): LoftLevel[] {
  if (fillet === 0) return [];
  return Array.from({ length: 9 }, (_, i): LoftLevel => {
    const angle = (i * Math.PI) / 16;
    return [plane + fillet * (1 - Math.cos(angle)), i === 8 ? 0 : fillet * (1 - Math.sin(angle))];
  });
}

/** The first facet of the fillet carried on a little below the flange's plane, so that it cuts that plane cleanly. */
function approach(corner: readonly LoftLevel[]): LoftLevel[] {
  const [[z0, offset0], [z1, offset1]] = [corner[0]!, corner[1]!];
  const share = 0.05;
  return [[z0 - share * (z1 - z0), offset0 + share * (offset0 - offset1)]];
}

function boundsOf(plan: Outline, bottom: number, top: number): Expected['bounds'] {
  const { min, max } = outlineBounds(plan);
  return [
    [min[0], min[1], bottom],
    [max[0], max[1], top],
  ];
}

/** The thread and its two lead-in chamfers as one opening. */
function boreCuts({ printed, printer, material, screw, family }: NutDesign): Cut {
  const { along } = printSizes(material, printer);
  return threadBore({
    ...(family?.kind === 'twin' ? { recess: recessOf(family, printed, along) } : {}),
    thread: printed.thread,
    starts: screw.starts,
    hand: screw.hand,
    columns: threadColumns(printed.thread, printed.lead, printer.chordError),
    leadIn: printed.leadIn,
    ...endsOf(printed),
  });
}

/** Holes through the plate, with their pockets. */
export function holeCuts(design: NutDesign): Cut[] {
  const { holes, printed, printer, material } = design;
  if (!holes || !printed.holes) return [];
  const { bottom, top } = endsOf(printed);
  const [from, to] = printed.flange ? [0, printed.flange.thickness] : [bottom, top];
  const { inside, along } = printSizes(material, printer);
  const sunk = pocketOf(holes);
  const roof = pocketRoof(design);
  const pocket = sunk && {
    pocket: sunk.pocket,
    side: sunk.side === 'flange' ? ('low' as const) : ('high' as const),
    depth: along(sunk.pocket.depth),
    ...(roof ? { roof } : {}),
  };
  return printed.holes.centres.map((center) =>
    holeCut({ center, from, to, bore: boreOf(holes), ...(pocket ? { pocket } : {}) }, inside, printer.chordError),
  );
}

/** A small sunk triangle on the face that goes up on the bed, where the mounting decides which one that is. */
function upMark(design: NutDesign): Cut[] {
  if (!isMarked(design)) return [];
  const { printed, holes, printer } = design;
  const { top, bottom } = endsOf(printed);
  const onFlange = topFace(design) === 'flange-face' && printed.flange !== undefined && printed.flange.offset === 0;
  const outer = onFlange
    ? flangeOutline(printed.flange!, printer.chordError)
    : bodyOutline(printed.body, printer.chordError);
  const plane = onFlange ? 0 : topFace(design) === 'flange-face' ? bottom : top;
  const inner = printed.thread.major / 2 + printed.leadIn;
  const place = freePlace(outer, inner + printed.relief, holes && onFlange ? { holes, printed } : undefined);
  if (!place || place.room < 0.6) return [];
  const size = Math.min(UP_MARK.radius, place.room);
  const triangle = circleOutline({ radius: size, sides: 3, center: place.at, turn: place.angle });
  const downward = plane !== top;
  const span = downward
    ? { from: plane - OVERSHOOT, to: plane + UP_MARK.depth }
    : { from: plane - UP_MARK.depth, to: plane + OVERSHOOT };
  const shape: Shape = { kind: 'feature', name: 'up-mark', shape: { kind: 'prism', outlines: [triangle], ...span } };
  return [{ shape, volume: polygonArea(triangle) * UP_MARK.depth }];
}

/** The widest free spot between the bore and the edge, away from holes: where, and how much room around it. */
function freePlace(
  outer: Outline,
  inner: number,
  around?: { holes: NonNullable<NutDesign['holes']>; printed: NutSizes },
) {
  let best: { at: [number, number]; angle: number; room: number } | undefined;
  for (let i = 0; i < 24; i++) {
    const angle = 15 * i;
    const edge = insideBy(outer, [0, 0]);
    const at = polar((edge + inner) / 2, angle);
    const taken = around
      ? around.printed.holes!.centres.map(
          ([x, y]) =>
            Math.hypot(x - at[0], y - at[1]) - Math.max(openingRadius(around.holes), headRadius(around.holes)),
        )
      : [];
    const room = Math.min(insideBy(outer, at), Math.hypot(...at) - inner, ...taken) - UP_MARK.clear / 2;
    if (!best || room > best.room + 1e-9) best = { at, angle, room };
  }
  return best;
}
