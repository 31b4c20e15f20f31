import { floatTurn, turnBacklash } from '../../mechanics/float.js';
import type { Material } from '../../presets/material.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import type { Spacer } from '../../sheet/sections/float.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { SHOULDER_LENGTHS, SHOULDER_LONGER, shoulderScrew } from '../../standards/fasteners/shoulder-screw.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';
import { fault } from '../../units/faults.js';
import { plain, worked } from '../../units/format.js';
import { exactly, type Measured, shifted } from '../../units/measured.js';
import type { HardwareRow } from '../part-kind.js';
import { NUT_FLOATS } from './cautions.js';

/** A nut that stays free: tight screws stand on sleeves or shoulders, and its flange slides between head and seat. */
export interface Float {
  /** wanted sideways, each way */
  readonly sideways: number;
  /** play along the axis */
  readonly along: Measured;
  readonly spacer: Spacer;
  /** outside of what stands in the flange's holes: sleeve, shoulder or bare screw */
  readonly pin: number;
  /** of what stands there, under the head: the flange and the play */
  readonly length: number;
  readonly screw: FastenerSize;
}

/** What a sheet says of it. */
export interface FloatSheet {
  readonly sideways?: number | undefined;
  readonly along?: number | undefined;
  readonly spacer?: Spacer | undefined;
  readonly sleeve?: number | undefined;
}

/** Usual figures of a floating nut, mm. @source common-practice */
const USUAL = { sideways: 0.3, along: 0.05, bare: 0.1, sleeveWall: 0.75 } as const;

/** A sleeve is filed to length by calipers: so far it may be off, mm. */
const FILED = 0.03;

/**
 * Works out on what a nut floats.
 *
 * @param sheet  what the sheet says
 * @param p.field     where it stands in the sheet
 * @param p.screw     size of the screws
 * @param p.thickness of what floats, mm
 * @param p.hole      its holes where they are as they are; left out where they are made to suit
 * @throws InputError a sleeve that its screw does not pass, no shoulder screw of that size
 */
export function floatOf(
  sheet: FloatSheet,
  p: { readonly field: string; readonly screw: FastenerSize; readonly thickness: number; readonly hole?: number },
  notes: Assumptions,
): Float {
  const { field, screw, thickness, hole } = p;
  const sideways = notes.or<number>(sheet.sideways, `${field}.sideways`, USUAL.sideways, 'enough for a bent screw');
  const outside = sheet.sleeve ?? Math.ceil(fastenerThread(screw).diameter + 2 * USUAL.sleeveWall);
  const passes = hole === undefined || hole > outside;
  const spacer = notes.or<Spacer>(
    sheet.spacer,
    `${field}.spacer`,
    passes ? 'sleeve' : 'bare',
    passes ? 'tight screws on sleeves hold, and leave the nut free' : `a sleeve of ${plain(outside)} mm does not pass`,
  );
  const bore = clearanceHole(screw, 'fine');
  if (spacer === 'sleeve' && outside < bore + 1)
    throw fault(`${field}.sleeve`, `${plain(outside)} mm`, `must be at least ${plain(bore + 1)} mm around an ${screw}`);
  const play = notes.or<number>(
    sheet.along,
    `${field}.along`,
    spacer === 'bare' ? USUAL.bare : USUAL.along,
    'free to slide, and little lost',
  );
  const pin = { sleeve: outside, shoulder: shoulderOf(spacer, screw, field), bare: fastenerThread(screw).diameter };
  return { sideways, along: alongOf(spacer, play), spacer, pin: pin[spacer], length: thickness + play, screw };
}

function shoulderOf(spacer: Spacer, screw: FastenerSize, field: string): number {
  if (spacer !== 'shoulder') return 0;
  if (screw !== 'M5' && screw !== 'M6' && screw !== 'M8')
    throw fault(
      `${field}.spacer`,
      'shoulder',
      `must be sleeve: shoulder screws have threads of M5, M6 or M8, not ${screw}`,
    );
  return shoulderScrew(screw).shoulder;
}

/** Sleeves are filed to length; shoulders come longer than they say; bare screws are set by hand. */
function alongOf(spacer: Spacer, play: number): Measured {
  if (spacer === 'shoulder') return { least: play, likely: play + SHOULDER_LONGER / 2, most: play + SHOULDER_LONGER };
  const off = spacer === 'bare' ? play / 2 : Math.min(FILED, play);
  return { least: play - off, likely: play, most: play + off };
}

/** Where the screws of a floating nut stop it, and how far it may go until then. */
export interface FloatStop {
  /** sideways, each way, as the holes come out */
  readonly sideways: Measured;
  /** of the screws, or of what else keeps it from turning, from the axis */
  readonly radius: number;
}

/** Travel that the float costs when the load reverses: along, and by turning from stop to stop. */
export function floatBacklash(along: Measured, { sideways, radius }: FloatStop, lead: number): Measured {
  const turning = (float: number) => turnBacklash({ lead, float: Math.max(0, float), radius });
  return {
    least: along.least + turning(sideways.least),
    likely: along.likely + turning(sideways.likely),
    most: along.most + turning(sideways.most),
  };
}

/** How far it floats, in words. */
export function floatWords(
  { along, spacer }: Pick<Float, 'along' | 'spacer'>,
  { sideways, radius }: FloatStop,
): string {
  const turn = floatTurn({ float: Math.max(0, sideways.likely), radius });
  const on = { sleeve: 'on sleeves', shoulder: 'on shoulder screws', bare: 'on screws that are not tightened' };
  return `the nut floats ${on[spacer]}: ${worked(sideways.likely, 'mm')} mm sideways each way, ${worked(along.likely, 'mm')} mm along, ±${plain(turn, 2)}° until its screws stop it`;
}

/** How it is put on, and what must never be tightened. */
export function floatCare({ spacer, along, length }: Float, { stressCracks }: Pick<Material, 'stressCracks'>): string {
  const lock = stressCracks ? 'prevailing-torque nuts' : 'thread lock';
  const free = `push the nut every way by hand: it must give sideways and rattle ${worked(along.likely, 'mm')} mm along`;
  const kept = {
    sleeve: `tighten its screws fully on the sleeves, file these to ${plain(length, 2)} mm, all alike; ${free}. Nothing tight may clamp the flange`,
    shoulder: `tighten the shoulder screws fully; measure shoulder and flange, and make up the rest with shims to ${plain(length, 2)} mm; ${free}. Nothing tight may clamp the flange`,
    bare: `do not tighten its screws; with ${lock}, run them home, then back them off until the flange moves by hand; ${free}. Never tighten them`,
  }[spacer];
  return `${NUT_FLOATS}: ${kept}. A little grease on both faces.`;
}

/** Sleeves, shims and washers to buy; the screws themselves are rows of their own, but for shoulder screws. */
export function floatHardware({ spacer, pin, length, screw }: Float, count: number): HardwareRow[] {
  const inside = clearanceHole(screw, 'fine');
  if (spacer === 'sleeve')
    return [
      { item: 'sleeve, steel or brass', size: `${plain(pin)} x ${plain(inside)} x ${plain(length, 2)} mm`, count },
    ];
  if (spacer === 'bare') return [];
  const long = SHOULDER_LENGTHS.find((one) => one >= length - 1e-9);
  if (long === undefined)
    return [{ item: 'shoulder screw ISO 7379', size: `${plain(pin)} mm, thread ${screw}, cut to suit`, count }];
  const shims = long - length;
  return [
    { item: 'shoulder screw ISO 7379', size: `${plain(pin)} x ${plain(long)} mm, thread ${screw}`, count },
    ...(shims > 0.005
      ? [{ item: 'shims around the shoulder', size: `${plain(pin)} mm, ${plain(shims, 2)} mm in all`, count }]
      : []),
  ];
}

/** Across what holds the flange down: the shoulder screw's head, or the washer under a head, mm. */
export function floatHead({ spacer, screw }: Pick<Float, 'spacer' | 'screw'>): number {
  return spacer === 'shoulder' ? shoulderScrew(screw).headDiameter : washer(screw).outside;
}

/** Length of a cap screw that a sleeve and a washer take. */
export function floatGrip({ spacer, length, screw }: Float): number {
  return spacer === 'shoulder' ? length : length + washer(screw).thickness;
}

/** Sideways float in holes, each way. */
export function floatIn(hole: Measured, pin: number): Measured {
  const room = shifted(hole, -pin);
  return { least: room.least / 2, likely: room.likely / 2, most: room.most / 2 };
}

/** No play. */
export const NONE: Measured = exactly(0);
