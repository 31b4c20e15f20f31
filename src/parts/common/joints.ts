import type { Bridging } from '../../presets/printer.js';
import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import { heatSetBore } from '../../standards/fasteners/plastic-holes.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';

/** What screw heads, nuts, inserts and threads need of a hole. */
export const JOINTS = ['through', 'counterbore', 'hexagon', 'insert', 'tapped'] as const;
export type Joint = (typeof JOINTS)[number];

/** Room that a pocket leaves around a head, and across the flats of a nut, on the diameter. @source common-practice */
const HEAD_ROOM = 0.5;
const NUT_ROOM = 0.2;

/** One hole of a pattern with its joint, finished sizes. */
export interface JointHole {
  readonly joint: Joint;
  /** undefined where no listed screw passes; then the hole is plain */
  readonly screw?: FastenerSize;
  /** clearance hole, mm */
  readonly diameter: number;
  /** roof over its pocket where that opens on the bed; a counterbore then takes a washer, which covers what is bridged */
  readonly roof?: Exclude<Bridging, 'none'>;
}

/** An opening around a hole's axis, finished sizes. */
export type Pocket =
  | { readonly kind: 'round'; readonly diameter: number; readonly depth: number }
  | { readonly kind: 'hexagon'; readonly acrossFlats: number; readonly depth: number };

/** The pocket that a joint needs, for its head or for its nut; undefined for a hole of one diameter. */
export function pocketOf({ joint, screw, roof }: JointHole): Pocket | undefined {
  if (screw === undefined) return undefined;
  if (joint === 'counterbore') {
    const { headDiameterKnurled, headHeight } = socketCapScrew(screw);
    const ring = roof ? washer(screw) : { outside: 0, thickness: 0 };
    return {
      kind: 'round',
      diameter: Math.max(headDiameterKnurled, ring.outside) + HEAD_ROOM,
      depth: headHeight + ring.thickness,
    };
  }
  if (joint !== 'hexagon') return undefined;
  const { acrossFlats, height } = hexNut(screw);
  return { kind: 'hexagon', acrossFlats: acrossFlats + NUT_ROOM, depth: height };
}

/** Whether the plate itself holds the screw's thread: nothing lies under a nut then, and the hole leaves no play. */
export function holdsThread(joint: Joint): boolean {
  return joint === 'insert' || joint === 'tapped';
}

/** Diameter of the hole itself: inserts and threads want their own bores. */
export function boreOf({ joint, screw, diameter }: JointHole): number {
  if (screw === undefined) return diameter;
  if (joint === 'insert') return heatSetBore(screw).bore;
  return joint === 'tapped' ? tapBore(screw) : diameter;
}

/**
 * Pilot bore for a tap: nominal diameter less the pitch.
 * @source common-practice: tap drills
 */
export function tapBore(screw: FastenerSize): number {
  const { diameter, pitch } = fastenerThread(screw);
  return diameter - pitch;
}

/** Largest radius of a pocket, its corners included. */
export function pocketRadius(pocket: Pocket): number {
  return pocket.kind === 'round' ? pocket.diameter / 2 : pocket.acrossFlats / Math.sqrt(3);
}

/** Radius of the largest opening of a hole anywhere along it. */
export function openingRadius(hole: JointHole): number {
  const pocket = pocketOf(hole);
  return pocket ? pocketRadius(pocket) : boreOf(hole) / 2;
}

/** Radius of a head that stands proud of its face, and of the room that a sunk one takes; 0 without a screw. */
export function headRadius(hole: JointHole): number {
  const { joint, screw } = hole;
  if (screw === undefined) return 0;
  return joint === 'counterbore' ? pocketRadius(pocketOf(hole)!) : socketCapScrew(screw).headDiameter / 2;
}

/** Radius of the washer under a proud head or nut; 0 without a screw. */
export function washerRadius({ screw }: JointHole): number {
  return screw === undefined ? 0 : washer(screw).outside / 2;
}

/** Diameter of what bears on the plastic: a washer under a proud head, a bare head in its counterbore, a nut's flats. */
export function seatDiameter(hole: JointHole): number {
  const { joint, screw } = hole;
  if (screw === undefined) return 0;
  if (takesWasher(hole)) return 2 * washerRadius(hole);
  if (joint === 'hexagon') return hexNut(screw).acrossFlats;
  return joint === 'counterbore' ? socketCapScrew(screw).headDiameter : boreOf(hole);
}

/** What bears on the plastic, in a word. */
export function seatName(hole: JointHole): string {
  if (takesWasher(hole)) return 'washer';
  return hole.joint === 'hexagon' ? 'nut' : 'head';
}

/** A proud head takes a washer, and a sunk one does on a roof that was bridged. */
function takesWasher({ joint, roof }: JointHole): boolean {
  return joint === 'through' || (joint === 'counterbore' && roof !== undefined);
}

/** Length of thread that an insert or a tapped hole wants: two diameters. @source common-practice */
export function threadReach(screw: FastenerSize): number {
  return 2 * fastenerThread(screw).diameter;
}
