import { screwShares } from '../../mechanics/bolt/screw-shares.js';
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
import { tippedStrip } from '../common/tipped-slab.js';
import type { AdapterDesign } from './dimensions.js';
import type { PlateSizes, Point, Step } from './plan.js';
import { flangeShape } from './seated-nut.js';
import { slabOf } from './slab.js';

/** How the plate bends under one newton. */
export interface PlateBending extends SlabBending {
  /** what holds it */
  readonly held: 'screws' | 'edge' | 'tipped';
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
  const load = loadOf(design);
  const pockets = pocketsOf(design.layout.plate, pull);
  const over = (supports: readonly Support[], held: PlateBending['held']): PlateBending[] => {
    const found = bendSlab({ slab, supports, ...load, pockets });
    if (!found) return [];
    const along = supports.map(({ at }) => dot(at, found.strip.along));
    return [{ ...found, held, span: Math.max(Math.max(...along) - Math.min(...along), 2 * found.strip.arm) }];
  };
  const edges = pull === 'onto' ? edgePlaces(design, { slab, load }) : [];
  if (edges.length > 0) return worst(edges.flatMap((edge) => over(edge, 'edge')));
  const supports = screwSupports(design);
  const found = over(supports, 'screws');
  const tipped = pull === 'away' ? tippedStrip({ slab, supports, ...load }, load) : undefined;
  return worst(tipped ? found.flatMap((one) => [one, { ...one, strip: tipped, held: 'tipped' as const }]) : found);
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
}

/** Where the load comes in: at the edge of a flange that is screwed tight, else somewhere around the bore. */
function loadOf({ nut, kind, layout }: AdapterDesign): Load {
  if (!nut || kind !== 'joined') {
    return { reach: () => layout.plate.bore / 2, across: layout.plate.bore };
  }
  const flange = flangeShape(nut.flange).map((at) => turned(at, layout.clocking.turn));
  const across = Math.min(...nut.flange.size, nut.flange.flats ?? Infinity);
  return { reach: (along) => reachAlong(flange, along), across, backed: across };
}

/** Recesses of the plate. Pulled off its carriage it is stretched on its outer face, pressed on, on the other: there a corner is a notch. */
function pocketsOf({ thickness, outerStep, innerStep }: PlateSizes, pull: Pull): LoadPocket[] {
  const pocket = ({ diameter, depth, center }: Step, stretched: Pull) => ({
    at: center,
    radius: diameter / 2,
    notch: pull === stretched ? rootNotch({ fillet: 0, thickness: thickness - depth }) : 1,
  });
  return [
    ...(outerStep ? [{ ...pocket(outerStep, 'away'), from: thickness - outerStep.depth, to: thickness }] : []),
    ...(innerStep ? [{ ...pocket(innerStep, 'onto'), from: 0, to: innerStep.depth }] : []),
  ];
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
