import { leverForce, thinLever } from '../../mechanics/shaft/ring-closing.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { type Bore, boreReach } from './bore.js';
import { clampHeights, clampOffset, leastClampRadius } from './clamp.js';
import type { ClampScrews } from './clamp-screws.js';

/** A slit body as a ring that its clamp screws close. Finished sizes. */
export interface ClampRing {
  /** middle of the wall from the axis */
  readonly radius: number;
  /** of the wall */
  readonly thickness: number;
  /** of the screws from the axis */
  readonly offset: number;
  /** along the axis: all that the slit has to close */
  readonly length: number;
  /** screws that close it on its shaft: one nearer to a web than the ring's radius only bends the web, one beyond the shaft presses on air */
  readonly counted: number;
  /** two halves with as many screws on either side: nothing bends when they close */
  readonly halves?: true;
}

/**
 * Force with which a ring presses on its shaft from either side: by the lever of a slit ring, of halves by the screws on both
 * sides of it.
 * @param ring  the ring
 * @param force of all screws on one side [N]
 */
export function pressingForce(ring: ClampRing, force: number): number {
  return ring.halves ? 2 * force : leverForce({ ...ring, force });
}

/** The most that it may press with, which the shaft sinks in under: the same by the lever of a thin ring. */
export function greatestPressing(ring: ClampRing, force: number): number {
  return ring.halves ? 2 * force : thinLever(ring) * force;
}

/** What a ring is worked out from. */
export interface RingBody {
  /** on the diameter */
  readonly outside: number;
  readonly bore: Bore;
  readonly offset: number;
  /** of the screws from the open end */
  readonly heights: readonly number[];
  /** of each screw's hole */
  readonly hole: number;
  /** of the shaft from the open end */
  readonly reach: number;
  /** the slit's length, and whether a web ends it there */
  readonly slit: { readonly length: number; readonly web: boolean; readonly through?: true };
}

/** The ring of a body as it is laid out. */
export function ringOf({ outside, bore, offset, heights, hole, reach, slit }: RingBody): ClampRing {
  const { radius, thickness } = wallOf(outside / 2, bore);
  const free = slit.web ? slit.length - radius : Infinity;
  const counted = heights.filter((height) => height <= free + 1e-9 && isOver({ height, hole }, reach)).length;
  return {
    radius,
    thickness,
    offset,
    length: slit.length,
    counted,
    ...(slit.through ? { halves: true as const } : {}),
  };
}

/** Whether a shaft that reaches in so far lies beside all of a screw. @source common-practice */
export function isOver({ height, hole }: { readonly height: number; readonly hole: number }, reach: number): boolean {
  return height + hole / 2 <= reach + 1e-9;
}

function wallOf(outer: number, bore: Bore): { readonly radius: number; readonly thickness: number } {
  const inner = (bore.form === 'hexagon' ? bore.across! : bore.diameter) / 2;
  return { radius: (inner + outer) / 2, thickness: outer - inner };
}

/** Length of slit from the open end at which every screw is far enough from a web to count. */
export function freeSlit(outer: number, bore: Bore, { screw, count, washers }: ClampScrews): number {
  return clampHeights(screw, count, washers).heights.at(-1)! + wallOf(outer, bore).radius;
}

/** Where screws are to be tried. */
export interface RingWish {
  readonly bore: Bore;
  /** of the outline, where it is known */
  readonly outer?: number;
  readonly web: boolean;
  readonly halves?: true;
  /** engaged length */
  readonly length: number;
  /** of the shaft from the open end, where that is known */
  readonly reach?: number | undefined;
}

/** The ring of clamp screws that are not laid out yet, in the least outline that takes them, far enough from a web. */
export function ringFor(
  { bore, outer, web, halves, length, reach = Infinity }: RingWish,
  screws: ClampScrews,
): ClampRing {
  const { screw, count, washers } = screws;
  const beside = boreReach(bore);
  const least = Math.max(outer ?? 0, leastClampRadius(beside, screw, washers));
  const hole = clearanceHole(screw, 'medium');
  const slit = Math.max(length, web ? freeSlit(least, bore, screws) : 0);
  return {
    ...wallOf(least, bore),
    offset: clampOffset(beside, screw),
    length: slit,
    counted: clampHeights(screw, count, washers).heights.filter((height) => isOver({ height, hole }, reach)).length,
    ...(halves ? { halves } : {}),
  };
}
