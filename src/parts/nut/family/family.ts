import { raisingTorque } from '../../../mechanics/power-screw/raising-torque.js';
import type { Assumptions } from '../../../sheet/assumptions.js';
import type { Screw } from '../../../sheet/resolve-screw.js';
import type { DutySheet } from '../../../sheet/sections/duty.js';
import type { FastenerSize } from '../../../standards/fasteners/sizes.js';
import { fault } from '../../../units/faults.js';
import { plain } from '../../../units/format.js';
import { CATCH_GAP, type CatchNutSheet, type NutPocket, nutPocket, nutPocketReach } from '../../common/bought-nut.js';
import { type Clamp, clampHalfHeight, fitClamp, leastClampRadius, SLIT_WIDTH } from '../../common/clamp.js';
import { LEAST_WALL } from '../../common/walls.js';
import type { NutSizes } from '../dimensions.js';
import type { FamilySheet } from './sheet.js';

export interface Pins {
  readonly diameter: number;
  readonly length: number;
  /** beside the axis, along X */
  readonly offset: number;
  readonly height: number;
}

export interface Spring {
  readonly inside: number;
  readonly outside: number;
  readonly free: number;
  readonly solid: number;
  readonly rate: number;
  readonly working: number;
}

/** Two bars that rise from the main nut into slots of the follower, at ±X. */
export interface Tongue {
  readonly inner: number;
  readonly outer: number;
  readonly width: number;
  readonly height: number;
  /** how deep the slots of the follower are, and how much wider than the tongue */
  readonly slotDepth: number;
  readonly air: number;
}

/** How a nut differs from a plain one, finished sizes. */
export type Family =
  | { readonly kind: 'split'; readonly closed: 'screws' | 'ring'; readonly clamp?: Clamp; readonly pins: Pins }
  | {
      readonly kind: 'clamped';
      readonly clamp: Clamp;
      readonly slit: { readonly width: number; readonly from: number };
    }
  | { readonly kind: 'holder'; readonly pocket: NutPocket; readonly opens: 'face' | 'end'; readonly bore: number }
  | { readonly kind: 'anti-backlash'; readonly spring: Spring; readonly follower: number; readonly tongue: Tongue };

/** What the family is worked out from. */
export interface FamilyBase {
  readonly finished: NutSizes;
  readonly screw: Screw;
  readonly duty: DutySheet;
}

const SPRING_ROOM = 0.4;
const KEY_AIR = 0.3;
const KEY_GRIP = 4;

/**
 * Works out how a nut differs from a plain one.
 * @throws InputError the body has no room for it, and what would have
 */
export function familyOf(sheet: FamilySheet | undefined, base: FamilyBase, notes: Assumptions): Family | undefined {
  if (!sheet) return undefined;
  const { flange, body } = base.finished;
  if (flange && flange.offset > 0)
    throw fault(
      'flange.offset',
      `${plain(flange.offset)} mm`,
      `must be 0 in a ${sheet.kind} nut: a stub under the flange would need support`,
    );
  if (sheet.kind !== 'holder' && (body.shape !== 'round' || body.flats !== undefined))
    throw fault('body.shape', body.shape, `must be round, without flats, in a ${sheet.kind} nut`);
  if (sheet.kind !== 'holder' && !flange && base.finished.holes)
    throw fault(
      'holes',
      '',
      `need a flange in a ${sheet.kind} nut: in the body they would meet its screws, pins or spring`,
    );
  switch (sheet.kind) {
    case 'split':
      return splitOf(sheet, base, notes);
    case 'clamped':
      return clampedOf(sheet, base, notes);
    case 'holder':
      return holderOf(sheet, base, notes);
    case 'anti-backlash':
      return antiBacklashOf(sheet, base, notes);
  }
}

function splitOf(sheet: FamilySheet, { finished }: FamilyBase, notes: Assumptions): Family {
  const closed = notes.or(sheet.closed, 'family.closed', 'screws', 'one on either side of the screw');
  const pin = sheet.pins ?? { diameter: 2, length: 6 };
  if (!sheet.pins) notes.note('family.pins', '2 x 6', 'two bought pins place the halves');
  const base = footOf(finished);
  const radius = pin.diameter / 2 + 0.05;
  const height = Math.max(LEAST_WALL, finished.relief + 0.8) + radius;
  const screw = notes.or<FastenerSize>(sheet.screw, 'family.screw', 'M3', 'closes the halves');
  const inner = boreReach(finished);
  const low = Math.max(base, height + radius + LEAST_WALL);
  const clamp = closed === 'screws' ? clampAt(finished, { screw, inner, slit: 0, low, field: 'family' }) : undefined;
  const offset = clamp?.offset ?? inner + LEAST_WALL + radius;
  const reach = pinReach(finished, height);
  const room = Math.sqrt(Math.max(0, reach ** 2 - (offset + radius) ** 2)) - LEAST_WALL;
  if (pin.length / 2 + 0.25 > room)
    throw fault(
      'family.pins',
      `${plain(pin.length)} mm`,
      `must be at most ${plain(Math.max(0, 2 * room - 0.5), 1)} mm long in this body; use a larger body`,
    );
  return { kind: 'split', closed, ...(clamp ? { clamp } : {}), pins: { ...pin, offset, height } };
}

/** Radius that is left around a pin: of the flange where the pin lies in it, else of the body. */
function pinReach({ flange, body }: NutSizes, height: number): number {
  const inFlange = flange && height + 2 * LEAST_WALL < flange.thickness;
  return (inFlange ? Math.min(...flange.size, flange.flats ?? Infinity) : body.across) / 2;
}

/** Where the straight part of the body begins. */
function footOf({ flange, fillet, relief }: NutSizes): number {
  return flange ? flange.thickness + fillet + 0.3 : relief + 0.3;
}

/** Reach of the threaded bore, chamfers included: nothing else may come nearer. */
function boreReach({ thread, leadIn }: NutSizes): number {
  return thread.major / 2 + leadIn;
}

interface ClampWish {
  readonly screw: FastenerSize;
  readonly inner: number;
  readonly slit: number;
  /** nothing below this height */
  readonly low: number;
  readonly field: string;
}

function clampAt({ body, length, relief }: NutSizes, { screw, inner, slit, low, field }: ClampWish): Clamp {
  const radius = body.across / 2;
  const fitted = fitClamp({ radius, bore: inner, slit }, screw);
  if (!fitted) {
    const least = leastClampRadius(inner, screw);
    throw fault(
      'body.diameter',
      `${plain(body.across)} mm`,
      `must be at least ${plain(2 * least)} mm for ${screw} screws beside this thread; or use a smaller family.screw`,
    );
  }
  const half = clampHalfHeight(screw) + 0.1;
  const [least, most] = [low + half, length - Math.max(LEAST_WALL, relief + 0.3) - half];
  if (most < least)
    throw fault(
      'body.length',
      `${plain(length)} mm`,
      `must be at least ${plain(length + least - most, 1)} mm: the ${field} screw and its walls need that much above flange and pins`,
    );
  return { ...fitted, heights: [(least + most) / 2] };
}

function clampedOf(sheet: FamilySheet, { finished }: FamilyBase, notes: Assumptions): Family {
  const screw = notes.or<FastenerSize>(sheet.screw, 'family.screw', 'M3', 'adjusts the slit');
  const foot = finished.flange ? footOf(finished) : 0;
  const inner = boreReach(finished);
  const low = finished.flange ? foot : LEAST_WALL;
  const clamp = clampAt(finished, { screw, inner, slit: SLIT_WIDTH, low, field: 'adjusting' });
  return { kind: 'clamped', clamp, slit: { width: SLIT_WIDTH, from: foot } };
}

function holderOf(sheet: FamilySheet, { finished, screw }: FamilyBase, notes: Assumptions): Family {
  const given = sheet.nut!;
  const usual = finished.flange ? 'end' : 'face';
  const why = finished.flange ? 'a flange on the bed prints without support' : 'the carriage closes the pocket';
  const opens = notes.or(sheet.pocket, 'family.pocket', usual, why);
  if (opens === 'face' && finished.flange)
    throw fault('family.pocket', 'face', 'must be end under a flange: a flange over the bed would need support');
  const pocket = nutPocket(given);
  const bore = Math.round((screw.major.likely + 0.8) * 100) / 100;
  requirePocket(pocket, finished, 'family.nut');
  if (bore > pocket.acrossFlats - 2)
    throw fault(
      'family.nut.across_flats',
      `${plain(pocket.nut.acrossFlats)} mm`,
      `must be above ${plain(bore + 2)} mm, so that the nut has a seat around the screw`,
    );
  return { kind: 'holder', pocket, opens, bore };
}

function requirePocket(pocket: NutPocket, { body, length, flange }: NutSizes, field: string): void {
  const wall = Math.min(body.across, body.flats ?? Infinity) / 2 - nutPocketReach(pocket);
  if (wall < LEAST_WALL)
    throw fault(
      'body',
      `${plain(body.across)} mm`,
      `must be at least ${plain(2 * (nutPocketReach(pocket) + LEAST_WALL), 1)} mm across around the nut of ${field}`,
    );
  const floor = length - pocket.depth;
  const least = Math.max(3, flange ? flange.thickness : 0);
  if (floor < least)
    throw fault(
      'body.length',
      `${plain(length)} mm`,
      `must be at least ${plain(pocket.depth + least)} mm: the pocket is ${plain(pocket.depth)} mm deep`,
    );
}

/**
 * The pocket of a metal nut that stands by, on the body end.
 * @throws InputError the body has no room for it
 */
export function catchPocketOf(
  sheet: CatchNutSheet | undefined,
  finished: NutSizes,
  notes: Assumptions,
): (NutPocket & { readonly gap: number }) | undefined {
  if (!sheet) return undefined;
  const gap = notes.or(sheet.gap, 'catch_nut.gap', CATCH_GAP.usual, 'bears nothing until the working thread fails');
  const pocket = nutPocket(sheet, gap);
  requirePocket(pocket, finished, 'catch_nut');
  return { ...pocket, gap };
}

function antiBacklashOf(sheet: FamilySheet, { finished, screw, duty }: FamilyBase, notes: Assumptions): Family {
  const given = sheet.spring!;
  const reach = given.inside.value / 2 - SPRING_ROOM;
  const width = Math.max(3, Math.round(screw.major.likely * 5) / 10);
  const inner = boreReach(finished) + 0.4;
  const outer = Math.sqrt(Math.max(0, reach ** 2 - (width / 2) ** 2));
  if (outer - inner < LEAST_WALL)
    throw fault(
      'family.spring.inside',
      `${plain(given.inside.value)} mm`,
      `must be at least ${plain(2 * (Math.hypot(inner + LEAST_WALL, width / 2) + SPRING_ROOM), 1)} mm around the keys`,
    );
  const seat = given.outside.value + 2 * finished.relief;
  if (finished.body.across < seat)
    throw fault(
      'body.diameter',
      `${plain(finished.body.across)} mm`,
      `must be at least ${plain(seat, 1)} mm, the seat of the spring`,
    );
  const working = workingLength(given, { finished, screw, duty }, notes);
  const slotDepth = KEY_GRIP + 2;
  const length = notes.or(
    sheet.follower,
    'family.follower',
    Math.max(10, Math.ceil(slotDepth + 2.5 * finished.thread.pitch)),
    'long enough behind its slots',
  );
  if (length < slotDepth + finished.thread.pitch)
    throw fault(
      'family.follower',
      `${plain(length)} mm`,
      `must be at least ${plain(slotDepth + finished.thread.pitch)} mm, a pitch behind its slots`,
    );
  if (length > finished.length)
    throw fault(
      'family.follower',
      `${plain(length)} mm`,
      `must be at most as long as the main nut, ${plain(finished.length)} mm`,
    );
  return {
    kind: 'anti-backlash',
    spring: {
      inside: given.inside.value,
      outside: given.outside.value,
      free: given.free.value,
      solid: given.solid,
      rate: given.rate,
      working,
    },
    follower: length,
    tongue: { inner, outer, width, height: working + KEY_GRIP, slotDepth, air: KEY_AIR },
  };
}

/** Length at which the spring keeps the nuts apart with one and a half times what pushes them together. */
function workingLength(given: NonNullable<FamilySheet['spring']>, base: FamilyBase, notes: Assumptions): number {
  const [least, most] = [given.solid + 1, given.free.value - 0.5];
  if (least > most)
    throw fault(
      'family.spring.solid',
      `${plain(given.solid)} mm`,
      `must be at most ${plain(most - 1)} mm, well below the free length`,
    );
  const wanted = given.free.value - (1.5 * (neededSpringForce(base) ?? 10)) / given.rate;
  const usual = Math.round(10 * Math.min(most, Math.max(least, wanted))) / 10;
  const working = notes.or(
    given.working,
    'family.spring.working',
    usual,
    'half as much again as the load and the friction',
  );
  if (working < given.solid + 0.5 || working > given.free.value)
    throw fault(
      'family.spring.working',
      `${plain(working)} mm`,
      `must be ${plain(given.solid + 0.5)} to ${plain(given.free.value)} mm`,
    );
  return working;
}

/**
 * Force that pushes the two nuts together: the load when it reverses, and the friction of the keys under the torque
 * that turns the follower. Undefined where the load is not known.
 */
export function neededSpringForce({ duty, screw, finished }: FamilyBase): number | undefined {
  if (duty.load === undefined) return undefined;
  const torque = raisingTorque({
    axialForce: Math.max(duty.load, 1e-6),
    lead: finished.lead,
    meanDiameter: screw.pitchDiameter.likely,
    flankAngle: screw.flankAngle,
    friction: 0.2,
  });
  const atKeys = torque / (finished.thread.major / 2 + finished.leadIn + 1.5);
  return duty.load + 0.2 * atKeys;
}
