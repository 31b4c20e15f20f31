import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import { heatSetBore } from '../../standards/fasteners/plastic-holes.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import type { PrintSizes } from './print-sizes.js';
import { LEAST_WALL } from './walls.js';

const NUT_ROOM = 0.2;

/** What a set screw turns in. */
export type SetScrewJoint = 'nut' | 'insert';

/** A set screw on −X, in a nut that is slipped in from the hub's end or in a heat-set insert. Sizes of one kind. */
export interface SetScrewPocket {
  readonly screw: FastenerSize;
  readonly joint: SetScrewJoint;
  readonly height: number;
  /** hole that the screw passes */
  readonly hole: number;
  /** nut: distance of its slot from the axis, thickness of the slot, its width across flats and its top above the screw */
  readonly slot?: { readonly inner: number; readonly thickness: number; readonly width: number; readonly top: number };
  /** insert: its bore, and how far from the axis the bore begins */
  readonly bore?: { readonly diameter: number; readonly inner: number };
}

/** Radius of outline that such a set screw needs beside a bore. */
export function leastSetScrewRadius(far: number, screw: FastenerSize, joint: SetScrewJoint): number {
  const inner = far + LEAST_WALL + 0.1;
  if (joint === 'insert') return inner + 2 * fastenerThread(screw).diameter;
  const { acrossFlats, height } = hexNut(screw);
  return Math.hypot(inner + height + NUT_ROOM, (acrossFlats + NUT_ROOM) / 2) + LEAST_WALL + 0.02;
}

/** Fits a set screw beside a bore whose flat or keyway side reaches `far` from the axis; the hub's end is at z = 0. */
export function fitSetScrew(far: number, screw: FastenerSize, joint: SetScrewJoint): SetScrewPocket {
  const nut = hexNut(screw);
  const hole = clearanceHole(screw, 'fine');
  const inner = far + LEAST_WALL + 0.1;
  if (joint === 'insert') {
    const { bore, boss } = heatSetBore(screw);
    return { screw, joint, hole, height: boss / 2 + 1, bore: { diameter: bore, inner } };
  }
  const top = nut.acrossFlats / Math.sqrt(3) + NUT_ROOM / 2;
  const slot = { inner, thickness: nut.height + NUT_ROOM, width: nut.acrossFlats + NUT_ROOM, top };
  return { screw, joint, hole, height: top + 2, slot };
}

/** Top of the pocket over the hub's end. */
export function setScrewTop({ height, slot, bore, hole }: SetScrewPocket): number {
  return height + Math.max(slot?.top ?? 0, (bore?.diameter ?? 0) / 2, hole / 2);
}

/** The pocket as it must stand in the file. */
export function printedSetScrew(pocket: SetScrewPocket, sizes: PrintSizes): SetScrewPocket {
  const { slot, bore } = pocket;
  return {
    ...pocket,
    height: sizes.along(pocket.height),
    hole: sizes.inside(pocket.hole),
    ...(slot
      ? {
          slot: {
            inner: sizes.across(slot.inner),
            thickness: sizes.inside(slot.thickness),
            width: sizes.inside(slot.width),
            top: sizes.along(slot.top),
          },
        }
      : {}),
    ...(bore ? { bore: { diameter: sizes.inside(bore.diameter), inner: sizes.across(bore.inner) } } : {}),
  };
}
