import { nutPocketReach } from '../common/bought-nut.js';
import { polar } from '../common/hole-pattern.js';
import { boreOf, headRadius, pocketRadius, washerRadius } from '../common/joints.js';
import type { ClockingTask } from './clocking.js';
import {
  insideEdge,
  isSolidRim,
  type Key,
  keyOutline,
  type PatternHoles,
  type PlateSizes,
  type Point,
  toCutout,
} from './plan.js';
import type { SeatedNut } from './seated-nut.js';
import { anyToDisc, type Disc, discInConvex, discToAny, discToDisc, discToSide, type TurnTerm } from './turn-terms.js';

/** Air that heads, washers and tools keep from whatever stands beside them, mm. @source common-practice */
export const LEAST_ROOM = 0.3;

/** Openings that stand further apart along the axis than this do not weaken each other, mm. */
const APART = 1.2;

/** A distance with what it lies between. */
export interface Named {
  readonly what: string;
  readonly gap: number;
}

/** Distances that do not change with the turn. */
export interface Walls {
  /** in the plate, mm */
  readonly fixed: readonly Named[];
  /** for heads and tools, each less what it needs, mm */
  readonly fixedRoom: readonly Named[];
}

/** What stands around the holes besides the plate itself. */
export interface Around {
  readonly nut?: SeatedNut;
  /** bore of the carriage, where it is known */
  readonly carriageBore?: { readonly diameter: number; readonly center: Point };
}

/** Walls beside holes that no edge of the plate is in, and that its turn does not change. */
export function wallsWithin(plate: PlateSizes): Named[] {
  const { nutHoles: nut, carriageHoles: carriage } = plate;
  return [...(nut ? ownWalls(plate, nut, 'nut holes') : []), ...ownWalls(plate, carriage, 'carriage holes')];
}

/** All walls and rooms of a plate that its turn does not change. */
export function wallsOf(plate: PlateSizes, around: Around): Walls {
  const { nutHoles: nut, carriageHoles: carriage } = plate;
  const turnless = plate.outline.shape === 'hull';
  const edge = insideEdge(plate);
  const onEdge = (holes: PatternHoles, what: string): Named[] =>
    holes.centres.map((centre) => ({ what, gap: edge(centre) - widest(holes) }));
  const cutoutsToHoles = carriage.centres.flatMap((centre) =>
    plate.cutouts.map((cutout) => ({
      what: 'carriage holes and cut-outs',
      gap: toCutout(cutout, centre) - widest(carriage),
    })),
  );
  return {
    fixed: [
      ...wallsWithin(plate),
      ...onEdge(carriage, 'carriage holes and the edge'),
      ...cutoutsToHoles,
      ...aroundMiddle(plate, edge),
      ...underRim(plate, edge),
      ...(nut && turnless ? onEdge(nut, 'nut holes and the edge') : []),
    ],
    fixedRoom: fixedRoomOf(plate, around),
  };
}

/** The task of choosing the turn, for a plate whose nut pattern stands at its sheet's own turn. */
export function turnTask(plate: PlateSizes, around: Around): ClockingTask {
  const { nutHoles: nut } = plate;
  return {
    walls: [...(nut ? turningWalls(plate, nut) : []), ...plate.keys.flatMap((key) => keyTerms(plate, key))],
    room: around.nut ? turningRoom(plate, nut, around.nut) : [],
    period: nut && around.nut ? periodOf(nut.centres, around.nut) : 360,
  };
}

/** Radius of a hole's widest opening anywhere along it. */
export function widest({ hole, pocket }: PatternHoles): number {
  return Math.max(boreOf(hole) / 2, pocket ? pocketRadius(pocket) : 0);
}

/** A round opening from one height to another. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly radius: number;
}

/** The openings of a hole along the axis. */
export function spansOf({ hole, pocket, opens, from, to, blind }: PatternHoles): Span[] {
  const low = blind !== undefined && opens === 'high' ? Math.max(from, to - blind) : from;
  const high = blind !== undefined && opens === 'low' ? Math.min(to, from + blind) : to;
  const bore = { from: low, to: high, radius: boreOf(hole) / 2 };
  if (!pocket) return [bore];
  const sunk = opens === 'low' ? { from, to: from + pocket.depth } : { from: to - pocket.depth, to };
  return [bore, { ...sunk, radius: pocketRadius(pocket) }];
}

/** What two holes need between their axes besides the wall; undefined where they stand one above the other. */
function radiiBetween(a: readonly Span[], b: readonly Span[]): number | undefined {
  let radii: number | undefined;
  for (const one of a) {
    for (const other of b) {
      const meet = one.from < other.to + APART && other.from < one.to + APART;
      if (meet) radii = Math.max(radii ?? 0, one.radius + other.radius);
    }
  }
  return radii;
}

/** Walls between the holes of one pattern, and to bore, steps, rim and catch pocket, which are all round the axis. */
function ownWalls(plate: PlateSizes, holes: PatternHoles, what: string): Named[] {
  const radius = widest(holes);
  const between = holes.centres.flatMap((a, i) =>
    holes.centres
      .slice(i + 1)
      .map((b) => ({ what: `${what} and their neighbours`, gap: Math.hypot(a[0] - b[0], a[1] - b[1]) - 2 * radius })),
  );
  const spans = spansOf(holes);
  const toBore = holes.centres.map((centre) => ({
    what: `${what} and the bore`,
    gap: Math.hypot(...centre) - plate.bore / 2 - radius,
  }));
  return [
    ...between,
    ...toBore,
    ...holes.centres.flatMap((centre) => toSteps(plate, centre, spans, what)),
    ...holes.centres.flatMap((centre) => toRim(plate, centre, radius, what)),
  ];
}

function toSteps(plate: PlateSizes, centre: Point, spans: readonly Span[], what: string): Named[] {
  const { outerStep, innerStep, catchPocket, thickness } = plate;
  const steps = [
    ...(outerStep ? [{ ...outerStep, from: thickness - outerStep.depth, to: thickness, name: 'the recess' }] : []),
    ...(innerStep ? [{ ...innerStep, from: 0, to: innerStep.depth, name: "the carriage's recess" }] : []),
    ...(catchPocket
      ? [
          {
            diameter: 2 * nutPocketReach(catchPocket),
            center: [0, 0] as const,
            from: thickness - catchPocket.depth,
            to: thickness,
            name: 'the catch nut',
          },
        ]
      : []),
  ];
  return steps.flatMap(({ diameter, center, from, to, name }) => {
    const distance = Math.hypot(centre[0] - center[0], centre[1] - center[1]);
    const radii = radiiBetween(spans, [{ from, to, radius: diameter / 2 }]);
    // a hole that starts on the floor of the step stands inside it
    const inside = distance < diameter / 2 && spans.every((span) => span.to <= from + 1e-9 || span.from >= to - 1e-9);
    if (radii === undefined) return [];
    const wide = Math.max(...spans.map(({ radius }) => radius));
    const gap = inside ? diameter / 2 - distance - wide + APART : distance - radii;
    return [{ what: `${what} and ${name}`, gap }];
  });
}

/** A hole stands clear of the ring, within it or outside, or goes through it with a wall on either side. */
function toRim({ rim, bore }: PlateSizes, centre: Point, radius: number, what: string): Named[] {
  if (!rim) return [];
  const distance = Math.hypot(centre[0] - rim.center[0], centre[1] - rim.center[1]);
  const outside = distance - rim.outer / 2 - radius + APART;
  const through = rim.outer / 2 - distance - radius;
  const within = isSolidRim(rim, bore) ? through : rim.inner / 2 - distance - radius + APART;
  return [{ what: `${what} and the rim`, gap: Math.max(outside, within) }];
}

/** Walls from the bore and the steps around it to edge and cut-outs. */
function aroundMiddle(plate: PlateSizes, edge: (point: Point) => number): Named[] {
  const { cutouts, bore, outerStep, innerStep, catchPocket } = plate;
  const openings = [
    { what: 'bore', at: [0, 0] as const, radius: bore / 2 },
    ...[outerStep, innerStep].flatMap((step) =>
      step ? [{ what: 'recess', at: step.center, radius: step.diameter / 2 }] : [],
    ),
    ...(catchPocket ? [{ what: 'catch nut', at: [0, 0] as const, radius: nutPocketReach(catchPocket) }] : []),
  ];
  return openings.flatMap(({ what, at, radius }) => [
    { what: `${what} and the edge`, gap: edge(at) - radius },
    ...cutouts.map((cutout) => ({ what: `${what} and cut-outs`, gap: toCutout(cutout, at) - radius })),
  ]);
}

/** A rim stands on the plate: it may be flush with the edge or a cut-out, and never beyond. */
function underRim({ rim, cutouts }: PlateSizes, edge: (point: Point) => number): Named[] {
  if (!rim) return [];
  const beside = (distance: number) => distance - rim.outer / 2 + APART;
  return [
    { what: 'the rim and the edge', gap: beside(edge(rim.center)) },
    ...cutouts.map((cutout) => ({ what: 'the rim and cut-outs', gap: beside(toCutout(cutout, rim.center)) })),
  ];
}

function turningWalls(plate: PlateSizes, nut: PatternHoles): TurnTerm[] {
  const { carriageHoles: carriage, cutouts } = plate;
  const radii = radiiBetween(spansOf(nut), spansOf(carriage));
  const radius = widest(nut);
  return nut.centres.flatMap((at) => [
    ...(radii === undefined
      ? []
      : carriage.centres.map((still) => discToDisc({ at, radius: radii }, { at: still, radius: 0 }))),
    ...edgeTerms(plate, { at, radius }),
    ...cutouts.map((cutout) => discToAny({ at, radius }, (point) => toCutout(cutout, point))),
  ]);
}

/** A hull is drawn around the holes wherever they turn, so only its flats are in their way. */
function edgeTerms(plate: PlateSizes, disc: Disc): TurnTerm[] {
  const { outline, flats } = plate;
  if (outline.shape === 'hull')
    return flats.map(({ angle, distance }) => discToSide(disc, [...polar(1, angle), distance]));
  const term = discToAny(disc, insideEdge(plate));
  if (outline.shape !== 'rectangular') return [term];
  // the sharp rectangle bounds the round-cornered one more tightly than a slope does
  const [x, y] = [outline.size[0] / 2, outline.size[1] / 2];
  const [cx, cy] = outline.center;
  const sharp = discInConvex(disc, [
    [cx + x, cy + y],
    [cx - x, cy + y],
    [cx - x, cy - y],
    [cx + x, cy - y],
  ]);
  return [term, ...sharp];
}

/** Keys stand on the plate, clear of the carriage's holes, of its heads and of cut-outs. */
function keyTerms(plate: PlateSizes, key: Key): TurnTerm[] {
  const { carriageHoles: carriage, cutouts } = plate;
  const bar: Disc = { at: key.center, radius: Math.hypot(...key.size) / 2 };
  const beside = Math.max(widest(carriage), outerHead(carriage)?.radius ?? 0);
  return [
    ...carriage.centres.map((at) => discToDisc(bar, { at, radius: beside })),
    ...cutouts.map((cutout) => discToAny(bar, (point) => toCutout(cutout, point))),
    ...keyOutline(key).flatMap((at) => edgeTerms(plate, { at, radius: 0 })),
  ];
}

/** Radius that a screw's head, nut or washer takes on the outer face, where one stands there; and whether it is sunk. */
function outerHead({ hole, opens }: PatternHoles): { readonly radius: number; readonly sunk: boolean } | undefined {
  if (hole.joint === 'through') return { radius: Math.max(headRadius(hole), washerRadius(hole)), sunk: false };
  if (hole.joint === 'counterbore' && opens === 'high') return { radius: headRadius(hole), sunk: true };
  return undefined;
}

function turningRoom(plate: PlateSizes, nut: PatternHoles | undefined, seated: SeatedNut): TurnTerm[] {
  const { carriageHoles: carriage } = plate;
  const head = outerHead(carriage);
  if (!head) return [];
  const reach = head.radius + LEAST_ROOM;
  const mustShow = !head.sunk || !seated.fitsLast;
  const flange =
    seated.seat === 'outside' && mustShow
      ? carriage.centres.map((at) => anyToDisc((point) => -seated.insideFlange(point), { at, radius: reach }))
      : [];
  const nutHead = nut && seated.headsOutside ? Math.max(headRadius(nut.hole), washerRadius(nut.hole)) : 0;
  const heads =
    nut && nutHead > 0
      ? nut.centres.flatMap((at) =>
          carriage.centres.map((still) => discToDisc({ at, radius: nutHead }, { at: still, radius: reach })),
        )
      : [];
  return [...(seated.roundFlange === undefined ? flange : []), ...heads];
}

/** Room for heads and tools that the turn does not change. */
export function fixedRoomOf(plate: PlateSizes, { nut: seated, carriageBore }: Around): Named[] {
  const { nutHoles: nut, carriageHoles: carriage } = plate;
  const head = outerHead(carriage);
  const rooms: Named[] = [];
  if (head && seated?.seat === 'outside' && seated.roundFlange !== undefined && (!head.sunk || !seated.fitsLast)) {
    const flange = seated.roundFlange / 2;
    for (const centre of carriage.centres) {
      const gap = Math.hypot(...centre) - head.radius - flange - LEAST_ROOM;
      rooms.push({ what: "heads of the carriage's screws and the nut's flange", gap });
    }
  }
  if (nut && seated?.hardwareOnCarriageFace && !carriageBore)
    rooms.push({ what: 'nuts behind the plate and the carriage, whose bore is not known', gap: -1 });
  if (nut && seated?.hardwareOnCarriageFace && carriageBore) {
    const reach = Math.max(headRadius(nut.hole), washerRadius(nut.hole));
    const inner = plate.rim ? Math.min(plate.rim.inner, carriageBore.diameter) : carriageBore.diameter;
    for (const [x, y] of nut.centres) {
      const distance = Math.hypot(x - carriageBore.center[0], y - carriageBore.center[1]);
      rooms.push({
        what: "nuts behind the plate and the carriage's bore",
        gap: inner / 2 - distance - reach - LEAST_ROOM,
      });
    }
  }
  return rooms;
}

/** After so many degrees the pattern, and the flange with it, looks as before. */
function periodOf(centres: readonly Point[], { roundFlange }: SeatedNut): number {
  const folds = roundFlange === undefined ? [] : centres.map((_, i) => centres.length - i);
  const fold = folds.find((count) => count > 1 && repeats(centres, 360 / count));
  return fold === undefined ? 360 : 360 / fold;
}

function repeats(centres: readonly Point[], degrees: number): boolean {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return centres.every(([x, y]) => {
    const [u, v] = [c * x - s * y, s * x + c * y];
    return centres.some(([p, q]) => Math.hypot(p - u, q - v) < 1e-6);
  });
}
