import { soft } from '../judge/check.js';
import { measured } from '../sheet/measured-field.js';
import { exactly, type Measured, shifted, smallest } from '../units/measured.js';
import type { Quantity } from '../units/quantity.js';
import type { Holder, Joint, PartFacts } from './facts.js';
import { figureOf, type Known, left, missingOf, noLess, told, total } from './known.js';
import type { AxisSheet } from './sheet.js';

/** Room before what must not be touched: the coupling, a guard ring, the end of a free screw, mm. @source common-practice */
export const GUARD = 5;

/** What is left of the motor's shaft between its plate and the coupling, mm: a hub that touches the plate rubs. @source common-practice */
export const SHAFT_ROOM = soft({ min: 1 }, { min: 0 });

/**
 * Places along the screw, counted from the face that the motor's shaft stands out of [mm].
 */
export interface Along {
  /** how far the coupling stays off that face */
  readonly shaftRoom: Known;
  /** where the screw begins: at the end of the motor's shaft and the gap behind it */
  readonly screwStart: Known;
  /** where the coupling ends */
  readonly jointEnd: Known;
  /** the first place that the nut may come to: as told, but not inside the coupling */
  readonly near: Known;
  /** the last place that it may come to; where the far end is free, the end of the screw or what is before it */
  readonly far: Known;
  /** how long what moves is: as told, but no shorter than its nut */
  readonly moving: Known;
  readonly nutLength?: number;
  /** between both places, less what moves: travel with no room at either end */
  readonly room: Known;
  /** room that is wanted before the first and the last place */
  readonly nearGap: number;
  readonly farGap: number;
  /** where the far face of the holder lies */
  readonly holderEnd: Known;
  /** where the screw ends, where its length is told */
  readonly screwEnd: Known;
  /** free length of the screw, from the coupling to the holder or to its free end */
  readonly span: Known;
  /** how far a screw is to stand out beyond its holder: a pitch, and no more than two [mm] */
  readonly stand: { readonly least: number; readonly most: number };
  readonly travel?: number;
  readonly screw?: Measured;
  readonly beyond?: Measured;
}

type Parts = readonly { readonly role: string; readonly facts: PartFacts }[];

/** Adds up what lies along the screw. */
export function alongScrew(
  { lengths = {} }: Pick<AxisSheet, 'lengths'>,
  parts: Parts,
  { calipers, pitch }: { readonly calipers: number; readonly pitch: number },
): Along {
  const read = (reading: Quantity | undefined) => reading && measured(reading, calipers);
  const joint = partWith(parts, 'joint');
  const holder = partWith(parts, 'holder')?.value;
  const { shaft, motorDepth, gap, screwDepth } = jointLengths(joint);
  const screwStart = total(shaft, gap);
  const jointEnd = total(screwStart, screwDepth);
  const hasCollar = parts.some(({ facts }) => facts.collar);
  const start = read(lengths.start);
  const near = start || hasCollar ? noLess(told(start, 'lengths.start'), jointEnd) : jointEnd;
  const screw = read(lengths.screw);
  const screwEnd = total(screwStart, told(screw, 'lengths.screw'));
  const clear = told(read(lengths.clear), 'lengths.clear');
  const far = holder ? clear : freeEnd(clear, screwEnd);
  const nutLength = longestNut(parts);
  const moving = noLess(told(read(lengths.moving), 'lengths.moving'), told(nutLength, ''));
  const held = holder && holder.role !== 'free';
  return {
    shaftRoom: left(shaft, motorDepth),
    screwStart,
    jointEnd,
    near,
    far,
    moving,
    ...(nutLength === undefined ? {} : { nutLength }),
    room: left(far, near, moving),
    nearGap: GUARD,
    farGap: holder?.nutGap ?? GUARD,
    holderEnd: holder ? holderEndOf(clear, holder, lengths.far_face) : clear,
    screwEnd,
    span: left(held ? clear : freeSpanEnd(screwEnd, clear, holder), jointEnd),
    stand: { least: pitch, most: 2 * pitch },
    ...(lengths.travel === undefined ? {} : { travel: lengths.travel }),
    ...(screw ? { screw } : {}),
    ...(lengths.beyond ? { beyond: read(lengths.beyond)! } : {}),
  };
}

/** What is left at the far end when the travel that is wanted starts with the usual room at the near one [mm]. */
export function leftAtFarEnd({ room, nearGap, travel }: Along): number | undefined {
  const value = figureOf(room);
  return value === undefined || travel === undefined ? undefined : value.least - nearGap - travel;
}

/** The longest of the nuts: less than that does not move. */
function longestNut(parts: Parts): number | undefined {
  const lengths = parts.flatMap(({ facts }) => facts.nut?.length ?? []);
  return lengths.length === 0 ? undefined : Math.max(...lengths);
}

function partWith<K extends keyof PartFacts>(parts: Parts, key: K) {
  for (const { role, facts } of parts) if (facts[key] !== undefined) return { role, value: facts[key] };
  return undefined;
}

/** Shaft, depth in the motor's half, gap and depth in the screw's half. */
function jointLengths(joint: { readonly role: string; readonly value: Joint } | undefined) {
  const own = (field: string) => (joint ? `parts.${joint.role}.${field}` : 'parts.coupling');
  const value: Partial<Joint> = joint?.value ?? {};
  return {
    shaft: told(value.shaft, joint ? 'motor.shaft.length' : 'parts.coupling'),
    motorDepth: told(value.motorDepth, own('motor.shaft')),
    gap: told(value.gap, own('motor_hub.stop')),
    screwDepth: told(value.screwDepth, own('screw')),
  };
}

/** A free screw ends where it ends; what stands in the nut's way before that is told as `clear`. */
function freeEnd(clear: Known, screwEnd: Known): Known {
  const [first, second] = [figureOf(clear), figureOf(screwEnd)];
  if (first && second) return { value: smallest(first, second) };
  return second ? screwEnd : 'value' in clear ? clear : screwEnd;
}

/** A ring holds nothing: the screw is free up to its end, or to the far side of the ring. */
function freeSpanEnd(screwEnd: Known, clear: Known, holder: Holder | undefined): Known {
  if (figureOf(screwEnd) || !holder) return screwEnd;
  return total(clear, { value: exactly(holder.thickness) });
}

function holderEndOf(clear: Known, { thickness, frame }: Holder, farFace: 'holder' | 'frame' | undefined): Known {
  if (farFace === undefined) return { missing: [...missingOf(clear), 'lengths.far_face'] };
  const before = farFace === 'frame' ? told(frame, 'frame.thickness of the end holder') : told(0, '');
  const end = total(clear, before);
  return 'value' in end ? { value: shifted(end.value, thickness) } : end;
}
