import type { HolePlaces } from '../common/hole-pattern.js';
import type { PrintSizes } from '../common/print-sizes.js';

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
  readonly pocket?: { readonly diameter: number; readonly depth: number; readonly leadIn: number };
  readonly holes: HolePlaces & { readonly diameter: number };
  /** plate over the bearing: the outline and the holes of the body */
  readonly cover?: { readonly thickness: number; readonly bore: number };
}

/** Slope of the lead-in of a pocket: 30° against the axis. */
const LEAD_SLOPE = Math.tan(Math.PI / 6);

/** Radius at which the pocket opens on the outer face. */
export function mouthRadius({ diameter, leadIn }: NonNullable<HolderPlan['pocket']>): number {
  return diameter / 2 + leadIn * LEAD_SLOPE;
}

/** The widest opening in the outer face, by its radius. */
export function openRadius({ pocket, bore, chamfer }: Pick<HolderPlan, 'pocket' | 'bore' | 'chamfer'>): number {
  return pocket ? mouthRadius(pocket) : bore / 2 + chamfer;
}

/** Height of the pocket's floor, which is the shoulder of the bearing; undefined without one. */
export function shoulderHeight({ pocket, thickness }: HolderPlan): number | undefined {
  return pocket && thickness - pocket.depth;
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
