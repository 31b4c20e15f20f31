import { roundReach } from '../../common/bore.js';
import { type Clamp, nutPocketReach, printedClamp } from '../../common/clamp.js';
import { clampWalls } from '../../common/hub-walls.js';
import type { PrintSizes } from '../../common/print-sizes.js';
import type { Wall } from '../../common/walls.js';
import type { NutDesign, NutSizes } from '../dimensions.js';
import { besideBore } from '../walls.js';
import { pinHoles } from './pin-holes.js';
import { pinReach } from './split.js';
import type { AntiBacklash, Variant } from './types.js';
import { aroundNut, holesToJoint, pinToBore } from './walls.js';

/** Where a nut's holes stand, as they are in the file. */
export interface HolesInFile {
  readonly centres: readonly (readonly [number, number])[];
  /** radius of the widest place of one */
  readonly opening: number;
}

/** Walls that a nut's family brings, as they stand in the file. */
export function variantWalls(
  { family, catchPocket, printed }: NutDesign,
  holes: HolesInFile,
  print: PrintSizes,
): Wall[] {
  const sizes = printed;
  const pocket = family?.kind === 'holder' ? family.pocket : catchPocket;
  const inFile = pocket && { ...pocket, acrossFlats: print.inside(pocket.acrossFlats) };
  return [
    ...(inFile
      ? [
          { where: 'bought nut to outside', size: aroundNut(inFile, sizes, holes) },
          { where: 'under the bought nut', size: sizes.length - print.along(inFile.depth) },
        ]
      : []),
    ...(family ? ownWalls(family, sizes, holes, print) : []),
  ];
}

function ownWalls(family: Variant, sizes: NutSizes, holes: HolesInFile, print: PrintSizes): Wall[] {
  switch (family.kind) {
    case 'split':
      return splitWalls(family, sizes, holes, print);
    case 'clamped':
      return closingWalls(family.clamp, {
        sizes,
        print,
        slit: print.inside(family.slit.width),
        low: print.along(family.slit.from),
      });
    case 'holder':
    case 'twin':
      return [];
    case 'anti-backlash':
      return tongueWalls(family, print);
  }
}

function splitWalls(
  family: Variant & { kind: 'split' },
  sizes: NutSizes,
  { centres, opening }: HolesInFile,
  print: PrintSizes,
): Wall[] {
  const pins = pinHoles(family.pins, print);
  const beyond = Math.sqrt(Math.max(0, pinReach(sizes, pins) ** 2 - (pins.offset + pins.radius) ** 2));
  const { clamp } = family;
  return [
    { where: 'holes to joint and pins', size: holesToJoint(pins, centres, opening) },
    { where: 'pin to bore', size: pinToBore(pins, sizes.thread.major / 2) },
    { where: 'pin to the end', size: pins.height - pins.radius },
    { where: 'pin to outside', size: beyond - pins.reach },
    ...(clamp ? closingWalls(clamp, { sizes, print, slit: 0, low: pins.height + pins.radius }) : []),
  ];
}

interface Closed {
  readonly sizes: NutSizes;
  readonly print: PrintSizes;
  readonly slit: number;
  /** what lies below the screw: a pin, the slit's end or the nut's */
  readonly low: number;
}

/** Beside the screw that closes halves or a slit. */
function closingWalls(clamp: Clamp, { sizes, print, slit, low }: Closed): Wall[] {
  const printed = printedClamp(clamp, print);
  const half = Math.max(printed.head / 2, nutPocketReach(printed));
  const [height] = printed.heights as [number];
  return [
    ...clampWalls(printed, { radius: sizes.body.across / 2, bore: roundReach(sizes.thread.major / 2), slit }),
    { where: 'closing screw to what lies below', size: height - half - low },
    { where: 'closing screw to the top', size: sizes.length - height - half },
  ];
}

/** Of the tongues on the main nut. */
function tongueWalls({ tongue }: AntiBacklash, print: PrintSizes): Wall[] {
  return [{ where: 'tongue', size: Math.min(print.outside(tongue.width), print.across(tongue.outer - tongue.inner)) }];
}

/** Of the follower: beside its thread, beside its slots and over them. */
export function followerWalls(
  { tongue, follower }: AntiBacklash,
  { body, thread }: NutSizes,
  print: PrintSizes,
): Wall[] {
  const half = print.inside(tongue.width + tongue.air) / 2;
  const reach = print.across(tongue.outer + tongue.air);
  return [
    { where: 'bore to outside', size: besideBore({ body }, thread.major / 2) },
    // nearest at the slot's corners, along the radius
    { where: 'slot to outside', size: besideBore({ body }, Math.hypot(reach, half)) },
    { where: 'over a slot', size: print.along(follower - tongue.slotDepth) },
  ];
}
