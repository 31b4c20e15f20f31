import { hexagonOutline, type Outline } from '../../solid/outline.js';
import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import type { FastenerSize } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';
import type { ReachBesideSlit } from './bore.js';
import type { PrintSizes } from './print-sizes.js';
import { roofedOutline } from './side-hole.js';
import { LEAST_WALL } from './walls.js';

/** Heads and screw ends stay this far inside the outline, mm. */
const INSIDE_OUTLINE = 0.3;
/** Room around a head and across the flats of a nut, on the diameter, mm. @source common-practice */
const HEAD_ROOM = 0.5;
const NUT_ROOM = 0.2;
/** Room of a nut driver around a nut that lies on a washer, on the diameter, mm. @source common-practice */
const DRIVER_ROOM = 2;
/** Least plastic between a seat and the slit, mm. */
const LEAST_SEAT = 2;

/** Width of a clamp's slit: three lines of the usual nozzle close, and a layer bridges it, mm. @source common-practice */
export const SLIT_WIDTH = 1.5;

/** A clamp across a slit on +X: the screw lies along Y beside the bore. Sizes of one kind: finished or printed. */
export interface Clamp {
  readonly screw: FastenerSize;
  /** x of the screws */
  readonly offset: number;
  /** heights of the screws */
  readonly heights: readonly number[];
  readonly hole: number;
  readonly head: number;
  /** −y of the head's seat, y of the nut's */
  readonly headSeat: number;
  readonly nutSeat: number;
  /** nut pocket: across flats, or round where the nut lies on a washer */
  readonly nut: number;
  /** under head and nut */
  readonly washers: boolean;
  /** under the head, usual length */
  readonly screwLength: number;
}

/** Where a clamp is to be fitted. */
export interface ClampPlace {
  /** radius of the hub's outline */
  readonly radius: number;
  readonly bore: ReachBesideSlit;
  readonly slit: number;
}

/** Distance of clamp screws from the axis, beside a bore that reaches so far. */
export function clampOffset({ slit: bore }: ReachBesideSlit, screw: FastenerSize): number {
  return bore + LEAST_WALL + 0.1 + clearanceHole(screw, 'medium') / 2;
}

/** A nut's pocket seen along the screw: a nut driver holds a nut that lies on a washer. */
export function nutPocket({ nut, washers }: Pick<Clamp, 'nut' | 'washers'>): Outline {
  return washers ? roofedOutline(nut / 2) : hexagonOutline({ acrossFlats: nut });
}

/** How far a nut's pocket reaches from its screw. */
export function nutPocketReach({ nut, washers }: Pick<Clamp, 'nut' | 'washers'>): number {
  return washers ? nut / 2 : nut / Math.sqrt(3);
}

/** What stands on the seats of a clamp screw: how wide each pocket is, how high head and nut stand in it. */
function pockets(screw: FastenerSize, washers: boolean) {
  const { headDiameterKnurled, headHeight } = socketCapScrew(screw);
  const nut = hexNut(screw);
  if (!washers)
    return {
      wide: headDiameterKnurled,
      head: headDiameterKnurled + HEAD_ROOM,
      headHeight,
      nut: nut.acrossFlats + NUT_ROOM,
      nutHeight: nut.height,
      under: 0,
    };
  const { outside, thickness } = washer(screw);
  return {
    wide: outside,
    head: outside + HEAD_ROOM,
    headHeight: headHeight + thickness,
    nut: Math.max(outside + HEAD_ROOM, nut.acrossCorners + DRIVER_ROOM),
    nutHeight: nut.height + thickness,
    under: thickness,
  };
}

/**
 * Fits clamp screws beside a bore so that nothing stands out of the outline.
 * @returns the clamp without its heights, or undefined where the outline is too small
 */
export function fitClamp(place: ClampPlace, screw: FastenerSize, washers = false): Omit<Clamp, 'heights'> | undefined {
  const { lengths } = socketCapScrew(screw);
  const { wide, head, headHeight, nut, nutHeight, under } = pockets(screw, washers);
  const hole = clearanceHole(screw, 'medium');
  const offset = clampOffset(place.bore, screw);
  const within = (x: number) => {
    const room = (place.radius - INSIDE_OUTLINE) ** 2 - x ** 2;
    return room > 0 ? Math.sqrt(room) : 0;
  };
  const least = (half: number) => {
    const besideBore = (place.bore.corner + LEAST_WALL + 0.1) ** 2 - Math.max(0, offset - half) ** 2;
    return Math.max(place.slit / 2 + LEAST_SEAT + 0.05, Math.sqrt(Math.max(0, besideBore)));
  };
  const walled = (reach: number) => {
    const room = place.radius ** 2 - (reach + LEAST_WALL + 0.05) ** 2;
    return room > 0 ? Math.sqrt(room) : 0;
  };
  const headMost = Math.min(within(offset + wide / 2) - headHeight, walled(offset + head / 2));
  const reach = nutPocketReach({ nut, washers });
  const nutMost = Math.min(within(offset + reach) - nutHeight, walled(offset + reach));
  const [headLeast, nutLeast] = [least(head / 2), least(reach)];
  if (headMost < headLeast || nutMost < nutLeast) return undefined;
  const endMost = within(offset + hole / 2);
  for (const screwLength of lengths) {
    const shank = screwLength - under;
    const headSeat = Math.max(headLeast, Math.min(headMost, shank - endMost));
    const end = shank - headSeat;
    const nutSeat = Math.min(nutMost, end - nutHeight);
    if (end <= endMost + 1e-9 && nutSeat >= nutLeast - 1e-9) {
      return {
        screw,
        washers,
        offset,
        hole,
        head,
        headSeat: tenth(headSeat),
        nutSeat: tenth(nutSeat),
        nut,
        screwLength,
      };
    }
  }
  return undefined;
}

/** Down to a tenth, so that nothing grows past what was found to fit; never below the least seat by more than that. */
function tenth(size: number): number {
  return Math.floor(size * 20 + 1e-6) / 20;
}

/** The least radius of an outline that holds such a clamp, in half millimetres; Infinity where none up to 100 mm does. */
export function leastClampRadius(bore: ReachBesideSlit, screw: FastenerSize, washers = false): number {
  for (let radius = Math.ceil(2 * bore.slit) / 2 + 1; radius <= 100; radius += 0.5) {
    if (fitClamp({ radius, bore, slit: SLIT_WIDTH }, screw, washers)) return radius;
  }
  return Infinity;
}

/** Half the room that a screw's pockets take along the axis of the hub. */
export function clampHalfHeight(screw: FastenerSize, washers = false): number {
  const { head, nut } = pockets(screw, washers);
  return (washers ? Math.max(head, nut) : head) / 2;
}

/** Heights of clamp screws from an end, walls between their pockets, and how much of the hub they take. */
export function clampHeights(
  screw: FastenerSize,
  count: number,
  washers = false,
): { readonly heights: number[]; readonly length: number } {
  const half = clampHalfHeight(screw, washers);
  const pitch = 2 * half + LEAST_WALL + 0.1;
  const first = half + LEAST_WALL + 0.3;
  const heights = Array.from({ length: count }, (_, i) => first + i * pitch);
  return { heights, length: first + (count - 1) * pitch + first - 0.3 };
}

/** The clamp as it must stand in the file. */
export function printedClamp(clamp: Clamp, sizes: PrintSizes): Clamp {
  return {
    ...clamp,
    offset: sizes.across(clamp.offset),
    heights: clamp.heights.map(sizes.along),
    hole: sizes.inside(clamp.hole),
    head: sizes.inside(clamp.head),
    headSeat: sizes.across(clamp.headSeat),
    nutSeat: sizes.across(clamp.nutSeat),
    nut: sizes.inside(clamp.nut),
  };
}
