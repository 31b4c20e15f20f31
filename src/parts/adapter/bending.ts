import { screwShares } from '../../mechanics/bolt/screw-shares.js';
import { looseRingBending } from '../../mechanics/flange/loose-ring.js';
import { rootNotch } from '../../mechanics/strength/notch.js';
import type { Pull } from '../../sheet/sections/duty.js';
import { onceFor } from '../../units/once.js';
import {
  bendSlab,
  type HeldSlab,
  type LoadPocket,
  roundEdge,
  type SlabBending,
  type Support,
} from '../common/held-slab.js';
import { turned } from '../common/hole-pattern.js';
import { boreOf, seatDiameter } from '../common/joints.js';
import { insideSimple } from '../common/polygon-distance.js';
import { dot, reachAlong, type Slab } from '../common/slab.js';
import { tipSlab } from '../common/tipped-slab.js';
import type { AdapterDesign } from './dimensions.js';
import type { Point, Step } from './plan.js';
import { type FlangeSizes, flangeShape } from './seated-nut.js';
import { slabOf } from './slab.js';

/** How the plate bends under one newton. */
export interface PlateBending extends SlabBending {
  /** what holds it; as a ring it turns inside out around its bore */
  readonly held: 'screws' | 'edge' | 'tipped' | 'ring';
  /** between what holds it on either side of the weakest cut, mm */
  readonly span: number;
}

/**
 * How the plate bends when the nut pulls it off the carriage, or presses it on. Pulled off, it hangs on the screws of
 * the carriage; pressed on, it spans the carriage's opening, or from screw to screw where the opening is not told.
 *
 * @returns undefined where nothing bends: what holds the plate lies under the load
 */
export function bendPlate(design: AdapterDesign, pull: Pull): PlateBending | undefined {
  return bendings(design)[pull];
}

/** Three checks ask for the bending of one design. */
const bendings = onceFor((design: AdapterDesign) => ({ away: bent(design, 'away'), onto: bent(design, 'onto') }));

function bent(design: AdapterDesign, pull: Pull): PlateBending | undefined {
  const slab = slabOf(design.layout.plate);
  const load = loadOf(design, pull);
  const pockets = pocketsOf(design, { pull, load });
  const over = (supports: readonly Support[], held: PlateBending['held']): PlateBending[] => {
    const found = bendSlab({ slab, supports, ...load, pockets });
    if (!found) return [];
    const along = supports.map(({ at }) => dot(at, found.strip.along));
    const span = Math.max(Math.max(...along) - Math.min(...along), 2 * found.strip.arm);
    const strip = { ...found, held, span };
    const stress = load.backed === undefined ? ringStress(slab, supports, load.across / 2) : 0;
    return [strip, { ...strip, strip: { ...found.strip, stress }, held: 'ring' }];
  };
  const edges = pull === 'onto' ? edgePlaces(design, { slab, load }) : [];
  if (edges.length > 0) return worst(edges.flatMap((edge) => over(edge, 'edge')));
  const supports = screwSupports(design);
  const found = over(supports, 'screws');
  const tipped = pull === 'away' ? tipSlab({ slab, supports, ...load }, load) : undefined;
  return worst(tipped ? found.flatMap((one) => [one, { ...one, ...tipped, held: 'tipped' as const }]) : found);
}

/**
 * A plate that is held all round and backed by no flange turns inside out around its bore: as a ring that is as wide as the plate is
 * where it is narrowest.
 */
function ringStress(slab: Slab, supports: readonly Support[], inner: number): number {
  const outer = insideSimple(slab.outline, [0, 0]);
  if (supports.length < 3 || outer <= inner) return 0;
  const radius = supports.reduce((sum, { at, share }) => sum + share * Math.hypot(...at), 0);
  const arm = Math.max(0, radius - inner);
  return looseRingBending({ axialForce: 1, arm, inner, outer, thickness: slab.thickness });
}

/** The one of the most stress, with the most that any sags and leans. */
function worst(found: readonly PlateBending[]): PlateBending | undefined {
  const [most] = found.toSorted((one, other) => other.strip.stress - one.strip.stress);
  const top = (of: 'sag' | 'lean') => Math.max(...found.map((one) => one[of]));
  return most && { ...most, sag: top('sag'), lean: top('lean') };
}

interface Load extends Pick<HeldSlab, 'reach' | 'backed'> {
  /** across what it comes in by, mm */
  readonly across: number;
  /** the screws that it hangs on; none where something presses on the plate */
  readonly screws: readonly Point[];
}

/**
 * Where the load comes in: around the bore, or of a nut that is screwed tight at the edge of the flange that presses on the plate. A
 * flange that draws the plate does so by its screws: beside them the plate bends away from it.
 */
function loadOf({ nut, kind, layout }: AdapterDesign, pull: Pull): Load {
  if (!nut || kind !== 'joined') {
    return { reach: () => layout.plate.bore / 2, across: layout.plate.bore, screws: [] };
  }
  const flange = flangeShape(nut.flange).map((at) => turned(at, layout.clocking.turn));
  const across = flangeAcross(nut.flange);
  const pressed = { reach: (along: Point) => reachAlong(flange, along), across, backed: across, screws: [] };
  const { nutHoles } = layout.plate;
  if (pull !== (nut.seat === 'outside' ? 'away' : 'onto') || !nutHoles) return pressed;
  const screws = nutHoles.centres;
  const overScrews = 2 * Math.max(...screws.map((at) => Math.hypot(...at))) + seatDiameter(nutHoles.hole);
  const drawn = Math.min(across, overScrews);
  const reach = (along: Point) => Math.max(0, Math.min(pressed.reach(along), reachAlong(screws, along)));
  return { reach, across: drawn, backed: drawn, screws };
}

/**
 * Recesses of the plate that the load comes in through: all of the screws that it hangs on stand in them. Pulled off its carriage the
 * plate is stretched on its outer face, pressed on, on the other: there a corner is a notch.
 */
function pocketsOf(
  { nut, layout: { plate } }: AdapterDesign,
  { pull, load }: { readonly pull: Pull; readonly load: Load },
): LoadPocket[] {
  const { thickness, outerStep, innerStep } = plate;
  const within = ({ center: [x, y], diameter }: Step) =>
    load.screws.every(([u, v]) => Math.hypot(u - x, v - y) <= diameter / 2);
  const spread = nut ? Math.max(load.across, flangeAcross(nut.flange)) : undefined;
  const pocket = ({ diameter, depth, center }: Step, stretched: Pull) => ({
    at: center,
    radius: diameter / 2,
    notch: pull === stretched ? rootNotch({ fillet: 0, thickness: thickness - depth }) : 1,
    ...(spread ? { spread } : {}),
  });
  return [
    ...(outerStep && within(outerStep)
      ? [{ ...pocket(outerStep, 'away'), from: thickness - outerStep.depth, to: thickness }]
      : []),
    ...(innerStep && within(innerStep) ? [{ ...pocket(innerStep, 'onto'), from: 0, to: innerStep.depth }] : []),
  ];
}

/** Across the narrowest of a flange. */
function flangeAcross({ size, flats }: FlangeSizes): number {
  return Math.min(...size, flats ?? Infinity);
}

function screwSupports({ layout: { plate } }: AdapterDesign): Support[] {
  const { centres, hole } = plate.carriageHoles;
  return shared(centres, { head: seatDiameter(hole), hole: boreOf(hole) });
}

function shared(places: readonly Point[], sizes: Pick<Support, 'head' | 'hole'>): Support[] {
  const shares = screwShares(places);
  return places.map((at, i) => ({ at, ...sizes, share: shares[i]! }));
}

/**
 * Places under the plate on the edge of the carriage's opening, each for its length of edge; of a slot its nearer two sides, as
 * wide as the load, of a square one either two. Empty where no opening is known or no edge lies under; no places where the
 * opening is no wider than the load.
 */
function edgePlaces(
  { carriage: { bore, slot, offset }, layout: { plate } }: AdapterDesign,
  { slab, load }: { readonly slab: Slab; readonly load: Load },
): Support[][] {
  if (!bore && !slot) return [];
  const across = bore ? bore.most : Math.min(...slot!);
  if (across + 2 * Math.hypot(...offset) <= load.across) return [[]];
  const [first] = plate.carriageHoles.centres;
  const edges = bore
    ? [roundEdge(across, first!)]
    : slotEdges(slot!).map((places) => ({ places, length: load.across }));
  return edges.flatMap(({ places, length }) => {
    const under = places
      .map(([x, y]): Point => [x + offset[0], y + offset[1]])
      .filter((at) => insideSimple(slab.outline, at) > 0 && Math.hypot(...at) > plate.bore / 2);
    return under.length > 1 ? [shared(under, { head: length, hole: 0 })] : [];
  });
}

/** Middles of two sides that face each other: the nearer two, of a square both twos. */
function slotEdges([x, y]: readonly [number, number]): Point[][] {
  const pair = (u: number, v: number): Point[] => [
    [u, v],
    [-u, -v],
  ];
  return [...(x <= y ? [pair(x / 2, 0)] : []), ...(y <= x ? [pair(0, y / 2)] : [])];
}
