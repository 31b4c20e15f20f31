import { leverShares } from '../../mechanics/bolt/lever-shares.js';
import { looseRingBending } from '../../mechanics/flange/loose-ring.js';
import { rootNotch } from '../../mechanics/strength/notch.js';
import type { Pull } from '../../sheet/sections/duty.js';
import { insideBy } from '../../solid/convex.js';
import { plain } from '../../units/format.js';
import { onceFor } from '../../units/once.js';
import { bendSlab, roundEdge, type Strip } from '../common/held-slab.js';
import { boreOf, seatDiameter } from '../common/joints.js';
import { reachAlong } from '../common/slab.js';
import { tipSlab } from '../common/tipped-slab.js';
import type { NutDesign } from './dimensions.js';
import { flangeSlab } from './flange-slab.js';
import { bodyOutline } from './plan.js';
import { jointOf } from './pockets.js';
import { leverOf } from './variants/twin.js';

type Point = readonly [number, number];

const CHORD = 0.02;

/** How a flange bends beside its body under one newton. */
export interface FlangeBending {
  /** MPa, with what the fillet at its root adds where that side is pulled */
  readonly stress: number;
  /** from the body to what holds the flange, mm */
  readonly arm: number;
  /** what the worst strip takes over what it would, were the load spread all round */
  readonly crowding: number;
  readonly words: string;
}

/**
 * Bending of a flange that its screws hold, or that the edge of the carriage's bore presses on: the weakest chord
 * beside the body, and for a plain round flange the loose ring too, whichever is worse.
 *
 * @returns undefined where no flange is bolted, or nothing holds it further out than the body
 */
export function bendFlange(design: NutDesign, pull: Pull): FlangeBending | undefined {
  return bendings(design)[pull];
}

/** Two checks ask for the bending of one design. */
const bendings = onceFor((design: NutDesign) => ({ away: bent(design, 'away'), onto: bent(design, 'onto') }));

function bent(design: NutDesign, pull: Pull): FlangeBending | undefined {
  const { finished, holes, carriage } = design;
  const slab = flangeSlab(design);
  if (!slab || !holes) return undefined;
  const { body } = finished;
  const joint = jointOf(holes);
  const edge = pull === 'onto' && carriage.bore ? roundEdge(carriage.bore.most, holes.centres[0]!) : undefined;
  const places = edge ? edge.places.filter((at) => insideBy(slab.outline, at) > 0) : holes.centres;
  const sizes = edge ? { head: edge.length, hole: 0 } : { head: seatDiameter(joint), hole: boreOf(joint) };
  const around = bodyOutline(body, CHORD);
  const across = Math.min(body.across, body.flats ?? Infinity);
  const reach = (along: Point) => reachAlong(around, along);
  const ways = leverShares(places, leverOf(design)).flatMap((shares) => {
    const supports = places.map((at, i) => ({ at, ...sizes, share: shares[i]! }));
    const found = bendSlab({ slab, supports, reach, backed: across });
    return found ? [{ ...found, supports }] : [];
  });
  if (ways.length === 0) return undefined;
  const { strip: weakest, supports } = ways.reduce((a, b) => (b.strip.stress > a.strip.stress ? b : a));
  const { arm, crowding } = turnOf(weakest, {
    thickness: slab.thickness,
    reach: reach(weakest.along),
    across,
  });
  const notch = notchOf(design, pull);
  const root = (times: number) =>
    times === 1 ? '' : `, ${plain(times, 1)} times that at its root (fillet ${plain(finished.fillet, 2)} mm)`;
  const words = (strip: Strip) => stripWords(strip, slab.thickness);
  const tipped = pull === 'away' ? tipSlab({ slab, supports, reach }, { across, notch }) : undefined;
  const worst = [
    { stress: notch * weakest.stress, words: `${words(weakest)}${root(notch)}` },
    { stress: ringStress(design, places), words: 'the flange as a loose ring' },
    ...(tipped
      ? [
          {
            stress: tipped.strip.stress,
            words: `tipped about its edge, ${words(tipped.strip)}${root(tipped.strip.corner)}`,
          },
        ]
      : []),
  ];
  return { ...worst.reduce((a, b) => (b.stress > a.stress ? b : a)), arm, crowding };
}

/** How the load on a strip turns the body: its arm from there, and how it crowds on the strip. */
function turnOf(
  { share, arm, section, distance }: Strip,
  { thickness, reach, across }: { readonly thickness: number; readonly reach: number; readonly across: number },
): Pick<FlangeBending, 'arm' | 'crowding'> {
  const width = section.area / thickness;
  return { arm: arm + Math.max(0, distance - reach), crowding: Math.max(1, (share * Math.PI * across) / width) };
}

/**
 * What the corner between flange and body adds to a strip; a loose ring has none. It is pulled where the load draws the body out of its flange; where nobody tells
 * the carriage's bore, the arm was taken right to the screws, which is more than the corner.
 */
function notchOf(design: NutDesign, pull: Pull): number {
  const { flange, fillet } = design.finished;
  const isPulled = isDrawnOut(design, pull) && (pull === 'away' || design.carriage.bore !== undefined);
  return isPulled ? rootNotch({ fillet, thickness: flange!.thickness }) : 1;
}

/** Whether the load draws the body out of its flange; else it presses it in. */
export function isDrawnOut({ stands }: Pick<NutDesign, 'stands'>, pull: Pull): boolean {
  return pull === (stands === 'away' ? 'away' : 'onto');
}

/** Stress of a plain round flange as a ring that turns inside out, per newton; 0 for other flanges. */
function ringStress({ finished: { flange, body } }: NutDesign, places: readonly Point[]): number {
  if (flange?.shape !== 'round' || flange.flats !== undefined) return 0;
  const inner = Math.min(body.across, body.flats ?? Infinity) / 2;
  const radius = places.reduce((sum, at) => sum + Math.hypot(...at), 0) / places.length;
  const { thickness, size } = flange;
  return looseRingBending({ axialForce: 1, arm: Math.max(0, radius - inner), inner, outer: size[0] / 2, thickness });
}

/** A strip in words: its arm and its section. */
function stripWords({ arm, section }: Strip, thickness: number): string {
  return `${plain(arm, 1)} mm of arm on a section of ${plain(section.area / thickness, 1)} × ${plain(thickness, 1)} mm`;
}
