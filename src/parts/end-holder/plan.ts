import type { HolePlaces } from '../common/hole-pattern.js';
import type { PrintSizes } from '../common/print-sizes.js';
import type { Bearing } from './bearing.js';

/** An end holder, its frame face on z = 0. Sizes of one kind: finished or printed. */
export interface HolderPlan {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly corner: number;
  /** hole for the screw; behind a bearing, the opening of its shoulder */
  readonly bore: number;
  /** of the mouths of a bush, at 45° */
  readonly chamfer: number;
  /** of the bearing, from the outer face */
  readonly pocket?: {
    readonly diameter: number;
    readonly depth: number;
    readonly leadIn: number;
    /** over the bearing */
    readonly lip?: Lip;
  };
  readonly holes: HolePlaces & { readonly diameter: number };
  /** plate over the bearing: the outline and the holes of the body */
  readonly cover?: { readonly thickness: number; readonly bore: number };
}

/** A lip at the mouth of a pocket, on a ring that a groove sets free. */
export interface Lip {
  /** it opens to here */
  readonly diameter: number;
  /** from the floor of the pocket to where it begins to reach in, at 45° */
  readonly from: number;
  /** how long it stands at its full reach */
  readonly land: number;
  /** thickness of the ring at the pocket, and width of the groove around it */
  readonly ring: number;
  readonly groove: number;
}

/** A pocket with a lip. */
export type LippedPocket = NonNullable<HolderPlan['pocket']> & { readonly lip: Lip };

/** Whether a lip stands over the pocket. */
export function isLipped(pocket: HolderPlan['pocket']): pocket is LippedPocket {
  return pocket?.lip !== undefined;
}

/** Radii of the groove around a ring. */
export function grooveRadii({ diameter, lip: { ring, groove } }: LippedPocket): readonly [number, number] {
  return [diameter / 2 + ring, diameter / 2 + ring + groove];
}

/** Slope of the lead-in of a pocket: 30° against the axis. */
const LEAD_SLOPE = Math.tan(Math.PI / 6);

/** Radius at which the pocket opens on the outer face. */
export function mouthRadius({ diameter, leadIn, lip }: NonNullable<HolderPlan['pocket']>): number {
  return (lip?.diameter ?? diameter) / 2 + leadIn * LEAD_SLOPE;
}

/** The widest opening in the outer face, by its radius. */
export function openRadius({ pocket, bore, chamfer }: Pick<HolderPlan, 'pocket' | 'bore' | 'chamfer'>): number {
  if (isLipped(pocket)) return grooveRadii(pocket)[1];
  return pocket ? mouthRadius(pocket) : bore / 2 + chamfer;
}

/** Radius of the plastic around what the middle holds: of a lipped pocket that of the groove around its ring. */
export function wallRadius(plan: Pick<HolderPlan, 'pocket' | 'bore' | 'chamfer'>): number {
  return isLipped(plan.pocket) ? openRadius(plan) : (plan.pocket?.diameter ?? plan.bore) / 2;
}

/** How high a lead-in of 30° is that opens so far on the radius. */
export function leadInHeight(opens: number): number {
  return opens / LEAD_SLOPE;
}

/** Height of the pocket's floor, which is the shoulder of the bearing; undefined without one. */
export function shoulderHeight({ pocket, thickness }: HolderPlan): number | undefined {
  return pocket && thickness - pocket.depth;
}

/** What the outer ring of a bearing sits in: of a flanged one the bore. */
export function seatDiameter(
  { pocket, bore }: Pick<HolderPlan, 'pocket' | 'bore'>,
  { flange }: Pick<Bearing, 'flange'>,
): number {
  return pocket && !flange ? pocket.diameter : bore;
}

/** Heights of the outer ring in its seat, flange included, and where the flange begins. */
export function ringHeights(
  plan: HolderPlan,
  { width, flange }: Pick<Bearing, 'width' | 'flange'>,
): { readonly from: number; readonly to: number; readonly flangeFrom?: number } {
  const floor = shoulderHeight(plan) ?? plan.thickness;
  if (!flange) return { from: floor, to: floor + width };
  const to = floor + flange.thickness;
  return { from: to - width, to, flangeFrom: floor };
}

/** Sizes of an end holder as they must stand in the file. */
export function printedHolder(plan: HolderPlan, sizes: PrintSizes): HolderPlan {
  const { inside, outside, along, across } = sizes;
  const { pocket, holes, cover } = plan;
  return {
    length: outside(plan.length),
    width: outside(plan.width),
    thickness: along(plan.thickness),
    corner: across(plan.corner),
    bore: inside(plan.bore),
    chamfer: across(plan.chamfer),
    ...(pocket
      ? {
          pocket: {
            diameter: inside(pocket.diameter),
            depth: along(pocket.depth),
            leadIn: along(pocket.leadIn),
            ...(pocket.lip ? { lip: printedLip(pocket.lip, sizes) } : {}),
          },
        }
      : {}),
    holes: {
      ...holes,
      diameter: inside(holes.diameter),
      centres: holes.centres.map(([x, y]) => [across(x), across(y)]),
    },
    ...(cover ? { cover: { thickness: along(cover.thickness), bore: inside(cover.bore) } } : {}),
  };
}

function printedLip({ diameter, from, land, ring, groove }: Lip, { inside, along, across }: PrintSizes): Lip {
  return {
    diameter: inside(diameter),
    from: along(from),
    land: along(land),
    ring: across(ring),
    groove: across(groove),
  };
}
