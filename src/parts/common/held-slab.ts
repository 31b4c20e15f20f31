import { degrees } from '../../mechanics/angle.js';
import { type Section, sectionOf } from '../../mechanics/flange/section.js';
import { type StripPiece, stripSag } from '../../mechanics/flange/strip-sag.js';
import { stripWidth } from '../../mechanics/flange/strip-width.js';
import { PLAN_CORNER_NOTCH } from '../../mechanics/strength/notch.js';
import { polar } from './hole-pattern.js';
import { type CutLine, dot, endsOn, materialAt, reachAlong, type Slab, type Span, sideOf } from './slab.js';

type Point = readonly [number, number];

/** What holds a slab down: a screw with its head, or a place on an edge. */
export interface Support {
  readonly at: Point;
  /** of head, washer or nut; 0 for an edge, mm */
  readonly head: number;
  /** of its hole; 0 for an edge, mm */
  readonly hole: number;
  /** of the load */
  readonly share: number;
}

/** A slab that is pulled in its middle and held further out. */
export interface HeldSlab {
  readonly slab: Slab;
  readonly supports: readonly Support[];
  /** how far from the axis, along a unit vector, the load comes in; of a ring, its radius */
  readonly reach: (along: Point) => number;
  /** what pulls is so stiff that it backs the slab as far as it reaches, and how wide it is; else a ring pulls, and the middle bends too */
  readonly backed?: number;
  /** pockets of the slab that the load may come in through */
  readonly pockets?: readonly LoadPocket[];
}

/** A round pocket. Where the load comes in within it, all of it goes over its rim, and on its floor alone. */
export interface LoadPocket {
  readonly at: Point;
  readonly radius: number;
  /** heights between which it is open */
  readonly from: number;
  readonly to: number;
  /** so many times the stress of its floor stands at its corner; 1 where that is pressed together */
  readonly notch: number;
  /** so wide around has the load spread at its rim, mm; left out, as wide as where it comes in */
  readonly spread?: number;
}

/** The weakest section of a held slab. All figures are for one newton. */
export interface Strip {
  /** share of the load on the supports beyond the section */
  readonly share: number;
  /** by which that share turns the section, what pulls beyond it counted, mm */
  readonly arm: number;
  readonly section: Section;
  /** where it is the floor of a pocket: how thick that is, and what its corner adds, which is in the stress */
  readonly floor?: { readonly thickness: number; readonly notch: number };
  /** what a sharp corner in plan adds that the cut runs through, which is in the stress; 1 where there is none */
  readonly corner: number;
  /** the cut it lies in */
  readonly along: Point;
  readonly distance: number;
  /** MPa; without bound where nothing is left to bend */
  readonly stress: number;
}

/** A round edge holds a slab all round: places at its quarters, the first towards a point, and the length that each stands for. */
export function roundEdge(across: number, [x, y]: Point): { readonly places: Point[]; readonly length: number } {
  const start = degrees(Math.atan2(y, x));
  const places = [0, 90, 180, 270].map((turn) => polar(across / 2, start + turn));
  return { places, length: (Math.PI * across) / places.length };
}

/** How a held slab bends under one newton. */
export interface SlabBending {
  readonly strip: Strip;
  /** of a plastic of modulus 1 MPa; without bound where nothing is left [mm, degrees] */
  readonly sag: number;
  readonly lean: number;
}

/** With more supports than this the directions towards them lie close enough. */
const CROWD = 8;

/** Cuts tried on the way from where the load comes in to the supports. */
const STATIONS = 8;

/**
 * Cuts tried beside a round opening, as shares of its radius from its middle towards the load: there the arm is longer, and
 * hardly more is left.
 */
const BEFORE_ROUND = [0, 0.15, 0.3, 0.5] as const;

/** A cut beside the end of an opening lies within it by this, mm. */
const BESIDE = 1e-6;

/**
 * The weakest straight cut between a load in the middle and what holds the slab, and how far it sags. In each direction
 * the cut runs square to it, the screws beyond it turn the strip that is there: as wide as their load spreads, no wider
 * than the slab, less what is cut out of it.
 *
 * @returns undefined where nothing lies beyond the load, so that nothing bends
 */
export function bendSlab(held: HeldSlab): SlabBending | undefined {
  const bent = directionsOf(held.supports).flatMap((along) => bentAlong(held, along));
  if (bent.length === 0) return undefined;
  return {
    strip: bent.map(({ strip }) => strip).reduce((worst, next) => (next.stress > worst.stress ? next : worst)),
    sag: Math.max(...bent.map(({ sag }) => sag)),
    lean: Math.max(...bent.map(({ lean }) => lean)),
  };
}

/** Towards every support, half way between neighbours, and along both axes. */
function directionsOf(supports: readonly Support[]): Point[] {
  const axes: Point[] = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ];
  const units = supports.flatMap(({ at }) => unit(at)).sort((a, b) => Math.atan2(a[1], a[0]) - Math.atan2(b[1], b[0]));
  const between = (units.length > CROWD ? [] : units).flatMap((a, i) => {
    const b = units[(i + 1) % units.length]!;
    return unit([a[0] + b[0], a[1] + b[1]]);
  });
  const kept = new Map([...units, ...between, ...axes].map((at) => [at.map((one) => one.toFixed(6)).join(), at]));
  return [...kept.values()];
}

/** None for the axis itself. */
function unit([x, y]: Point): Point[] {
  const length = Math.hypot(x, y);
  return length < 1e-9 ? [] : [[x / length, y / length]];
}

function bentAlong(held: HeldSlab, along: Point): SlabBending[] {
  const reach = held.reach(along);
  const carrying = held.supports.filter(({ share }) => share > 0);
  const beyond = carrying.filter(({ at }) => dot(at, along) > reach + 1e-9);
  if (beyond.length === 0) return [];
  const last = Math.max(...beyond.map(({ at, head }) => dot(at, along) - head / 2));
  const round = held.backed === undefined ? {} : { across: held.backed, count: carrying.length };
  const [first, ring] = held.backed === undefined ? [0, reach] : [reach, 0];
  const cuts = stationsBetween(first, Math.max(first, last), held.slab, along).map((distance) => ({
    distance,
    strips: stripsAt(held.slab, beyond, { along, distance, ring, round }),
  }));
  const rims = rimsOf(held, along, { reach, last }).flatMap(({ pocket, distance }) =>
    stripsAt(floorOf(held.slab, pocket), beyond, {
      along,
      distance,
      ring,
      round: { ...round, ...(round.across && pocket.spread ? { across: pocket.spread } : {}) },
    }).map((strip) => onFloor(strip, held.slab, pocket)),
  );
  const strips = [...cuts.flatMap(({ strips }) => strips), ...rims];
  if (strips.length === 0) return [];
  const strip = strips.reduce((worst, next) => (next.stress > worst.stress ? next : worst));
  return [{ strip, ...sagOf(cuts, beyond, along) }];
}

/** Even steps from where the load comes in to the last head, and on the way the middle and both ends of every opening, or of a round one its nearer half, and either side of every sharp corner. */
function stationsBetween(first: number, last: number, { openings, corners = [] }: Slab, along: Point): number[] {
  const even = Array.from({ length: STATIONS + 1 }, (_, i) => first + ((last - first) * i) / STATIONS);
  const narrow = openings.flatMap(({ shape }) => {
    if ('at' in shape) return BEFORE_ROUND.map((share) => dot(shape.at, along) - share * shape.radius);
    const far = reachAlong(shape.outline, along);
    const near = -reachAlong(shape.outline, [-along[0], -along[1]]);
    return [near + BESIDE, (near + far) / 2, far - BESIDE];
  });
  const sharp = corners.flatMap((at) => [dot(at, along) - BESIDE, dot(at, along) + BESIDE]);
  return [...new Set([...even, ...[...narrow, ...sharp].filter((at) => at > first && at < last)])].sort(
    (a, b) => a - b,
  );
}

/** Rims of the pockets that the load comes in through, on its way to the heads. */
function rimsOf({ pockets = [] }: HeldSlab, along: Point, { reach, last }: { reach: number; last: number }) {
  return pockets
    .map((pocket) => ({ pocket, distance: dot(pocket.at, along) + pocket.radius }))
    .filter(({ distance }) => distance >= reach && distance <= last);
}

/** A slab that is nowhere thicker than the floor of its pocket. */
function floorOf(slab: Slab, { from, to }: LoadPocket): Slab {
  return { ...slab, openings: [...slab.openings, { shape: { outline: slab.outline }, from, to }] };
}

function onFloor(strip: Strip, slab: Slab, { from, to, notch }: LoadPocket): Strip {
  return { ...strip, stress: notch * strip.stress, floor: { thickness: slab.thickness - (to - from), notch } };
}

interface At {
  readonly along: Point;
  readonly distance: number;
  /** radius of the ring around which the load comes in; 0 where none of it lies beyond a cut, mm */
  readonly ring: number;
  /** what supports around something round share */
  readonly round: { readonly across?: number; readonly count?: number };
}

/** A support beyond a cut, with the part of the cut that its load spreads to. */
interface Spread {
  readonly support: Support;
  readonly from: number;
  readonly to: number;
}

/** Strips at one cut: supports whose spreads meet bend one strip together. */
function stripsAt(slab: Slab, beyond: readonly Support[], at: At): Strip[] {
  const { along, distance, ring } = at;
  const pulled = ringBeyond(ring, distance) / beyond.reduce((sum, { share }) => sum + share, 0);
  return groupsOf(spreadsAt(slab, beyond, at)).map((group): Strip => {
    const spans = group.map(({ from, to }) => [from, to] as const);
    const section = sectionOf(materialAt(slab, { along, distance }, spans));
    const share = group.reduce((sum, { support }) => sum + support.share, 0);
    const moment = group.reduce(
      (sum, { support }) => sum + support.share * (dot(support.at, along) - distance - pulled),
      0,
    );
    const corner = meetsCorner(slab, { along, distance }, spans) ? PLAN_CORNER_NOTCH : 1;
    const stress = moment <= 1e-12 ? 0 : section.modulus === 0 ? Infinity : (corner * moment) / section.modulus;
    return { share, arm: moment / share, section, corner, along, distance, stress };
  });
}

/** Whether a cut runs through a sharp corner within some spans of it. */
function meetsCorner({ corners = [] }: Slab, { along, distance }: CutLine, within: readonly Span[]): boolean {
  return corners.some((at) => {
    const across = dot(at, sideOf(along));
    return Math.abs(dot(at, along) - distance) <= 2 * BESIDE && within.some(([a, b]) => across >= a && across <= b);
  });
}

/**
 * Moment about a cut of the part beyond it of one newton that comes in evenly around a ring [mm].
 *
 *     M = (√(r² − z²) − z·φ) / π      cos φ = z/r;  half of the ring has its middle 2·r/π from the axis
 */
function ringBeyond(radius: number, distance: number): number {
  if (distance >= radius) return 0;
  const reached = Math.sqrt(radius ** 2 - distance ** 2) - distance * Math.acos(distance / radius);
  return reached / Math.PI;
}

function groupsOf(spreads: readonly Spread[]): Spread[][] {
  const groups: Spread[][] = [];
  let end = -Infinity;
  for (const one of spreads.toSorted((a, b) => a.from - b.from)) {
    if (one.from < end) groups.at(-1)!.push(one);
    else groups.push([one]);
    end = Math.max(end, one.to);
  }
  return groups;
}

/**
 * How far each support spreads on a cut, from its foot there or from the edge that lies before that. A cut through a support's own hole
 * shears there and does not bend.
 */
function spreadsAt(slab: Slab, beyond: readonly Support[], { along, distance, round }: At): Spread[] {
  const side = sideOf(along);
  const [low, high] = endsOn(slab, { along, distance }) ?? [-Infinity, Infinity];
  return beyond.flatMap((support) => {
    const arm = dot(support.at, along) - distance;
    if (arm <= support.hole / 2 + 1e-9) return [];
    const half = stripWidth({ head: support.head, arm, ...round }) / 2;
    const middle = Math.min(Math.max(dot(support.at, side), low), high);
    return [{ support, from: middle - half, to: middle + half }];
  });
}

/** Sag of the load against the supports beyond it, by the strips on the way. */
function sagOf(
  cuts: readonly { readonly distance: number; readonly strips: readonly Strip[] }[],
  beyond: readonly Support[],
  along: Point,
): { readonly sag: number; readonly lean: number } {
  const force = beyond.reduce((sum, { share }) => sum + share, 0);
  const middle = beyond.reduce((sum, { at, share }) => sum + share * dot(at, along), 0) / force;
  const bending = cuts.filter(({ distance, strips }) => distance < middle && strips.length > 0);
  const pieces = bending.map(({ distance, strips }, i): StripPiece => {
    const total = (of: 'area' | 'inertia') => strips.reduce((sum, { section }) => sum + section[of], 0);
    const from = middle - (bending[i + 1]?.distance ?? middle);
    return { from, to: middle - distance, area: total('area'), inertia: total('inertia') };
  });
  if (pieces.some(({ area }) => area === 0)) return { sag: Infinity, lean: Infinity };
  return stripSag({ force, modulus: 1, pieces });
}
