import * as joints from '../common/joints.js';
import type { PocketedPattern } from '../common/pocket-floor.js';
import { reachAlong } from '../common/slab.js';
import type { Holes, NutDesign } from './nut-design.js';
import { bodyOutline, flangeOutline } from './plan.js';
import { leverOf } from './variants/twin.js';

/** Fine enough for an edge that a nut tips about, mm. */
const CHORD = 0.02;

/** A pocket beside a hole, finished sizes, and the side it opens to. */
export interface SidedPocket {
  readonly pocket: joints.Pocket;
  readonly side: 'body' | 'flange';
}

/** A nut's hole as a joint. */
export function jointOf({ joint, screw, diameter, roof }: Holes): joints.JointHole {
  return { joint, diameter: diameter.likely, ...(screw ? { screw } : {}), ...(roof ? { roof } : {}) };
}

/** The pocket that a joint needs, or undefined for a plain hole. A nut sits opposite the head. */
export function pocketOf(holes: Holes): SidedPocket | undefined {
  const pocket = joints.pocketOf(jointOf(holes));
  if (!pocket) return undefined;
  const [head, opposite] = holes.head === 'flange' ? (['flange', 'body'] as const) : (['body', 'flange'] as const);
  return { pocket, side: holes.joint === 'counterbore' ? head : opposite };
}

/** Diameter of the hole itself: a heat-set insert wants its own bore. */
export function boreOf(holes: Holes): number {
  return joints.boreOf(jointOf(holes));
}

/** Radius of the largest opening of a hole anywhere in the plate. */
export function openingRadius(holes: Holes): number {
  return joints.openingRadius(jointOf(holes));
}

/** Radius that a head takes up on the side it sits on; 0 where nothing sits. */
export function headRadius(holes: Holes): number {
  return holes.head === 'none' ? 0 : joints.headRadius(jointOf(holes));
}

/** Radius that lies on that side: of the head, or of the washer under it; 0 where nothing sits. */
export function seatRadius(holes: Holes): number {
  return holes.head === 'none' ? 0 : Math.max(headRadius(holes), joints.seatDiameter(jointOf(holes)) / 2);
}

/** Holes with a pocket for head or nut, and the plastic under it. */
export function pocketedOf({
  holes,
  finished,
  family,
}: Pick<NutDesign, 'holes' | 'finished' | 'family'>): PocketedPattern | undefined {
  const pocket = holes && pocketOf(holes)?.pocket;
  if (!pocket) return undefined;
  const floor = (finished.flange?.thickness ?? finished.length) - pocket.depth;
  return {
    hole: jointOf(holes),
    centres: holes.centres,
    pocket,
    floor,
    edge: edgeOf(finished),
    lever: leverOf({ family }),
  };
}

/** How far flange or body lies on its seat along a unit vector. */
export function edgeOf({ flange, body }: NutDesign['finished']): (along: readonly [number, number]) => number {
  const outline = flange ? flangeOutline(flange, CHORD) : bodyOutline(body, CHORD);
  return (along) => reachAlong(outline, along);
}
