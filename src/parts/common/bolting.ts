import { hard, type LimitsInForce, notJudged, type Outcome, soft, told, valued } from '../../judge/check.js';
import { besideScrews } from '../../mechanics/bolt/beside-screws.js';
import { forcedScrewLoad } from '../../mechanics/bolt/forced-screw.js';
import { mostShare } from '../../mechanics/bolt/lever-shares.js';
import { preloadFromTorque, pressureUnderHead, torqueForPreload } from '../../mechanics/bolt/preload.js';
import { pullOutForce } from '../../mechanics/bolt/pull-out.js';
import { allowableStress, pressureWhileTightening } from '../../mechanics/strength/allowable.js';
import { HOURS, ROOM } from '../../mechanics/strength/plastic.js';
import { BEDDED, BEDDED_ON_BRIDGE, strainKept } from '../../mechanics/strength/relaxation.js';
import { stiffnessShare } from '../../mechanics/strength/stiffness.js';
import type { Material } from '../../presets/material.js';
import type { Pull } from '../../sheet/sections/duty.js';
import { fastenerThread } from '../../standards/fasteners/sizes.js';
import { seatingTorque } from '../../standards/fasteners/tightening.js';
import { plain, upwards, worked } from '../../units/format.js';
import { difference, exactly, type Measured, shifted, sum, widened } from '../../units/measured.js';
import { boreOf, holdsThread, type JointHole, seatDiameter, threadReach } from './joints.js';
import { judgedTemperature, type LoadCase, type Loaded, loadCases, missingOf } from './load-cases.js';
import { PLACE_SCATTER } from './residual.js';

/** Clamp force for every newton that pulls on the joint: it must not open when the load jerks or the plate pries. */
const RESERVE = { standing: 2, moment: 1 } as const;

/** A screw that keeps less than so many times what stands on it shakes loose in time. @source common-practice */
const SHAKES_LOOSE = 3;

/** How a message says so; the card then asks for what locks screws. */
export const LOOSE_WORDS = `below ${SHAKES_LOOSE} × the load they shake loose in time: prevailing-torque nuts hold them`;

/** How the plastic holds one screw. */
interface Hold {
  readonly by: 'bearing' | 'pull-out';
  /** N for every MPa of pressure under the head, or of shear around the thread */
  readonly perMPa: number;
}

/** What one screw of a joint clamps with. */
export interface ClampForce extends Hold {
  /** when it has just been tightened, N */
  readonly fresh: number;
  /** N·mm */
  readonly torque: number;
  readonly setBy: Hold['by'] | 'the screw';
  /** share that is left once the skin under the head has bedded in */
  readonly bedded: number;
}

function holdOf(hole: JointHole, length: number): Hold | undefined {
  const { screw, joint } = hole;
  if (screw === undefined) return undefined;
  if (holdsThread(joint)) {
    const { diameter } = fastenerThread(screw);
    const held = joint === 'insert' ? boreOf(hole) : diameter;
    const perMPa = pullOutForce({ diameter: held, length: Math.min(length, threadReach(screw)), shear: 1 });
    return { by: 'pull-out', perMPa };
  }
  const seat = { headDiameter: seatDiameter(hole), holeDiameter: hole.diameter };
  if (!(seat.headDiameter > seat.holeDiameter)) return undefined;
  return { by: 'bearing', perMPa: 1 / pressureUnderHead({ preload: 1, ...seat }) };
}

/**
 * Force that a screw is tightened to: what the plastic bears for the minutes of tightening under head or nut, or around
 * the thread; never more than the screw's own seating torque gives.
 * @param length  of the hole in the plastic, mm
 * @returns undefined where no listed screw passes, or its head does
 */
export function clampForce(hole: JointHole, length: number, material: Material): ClampForce | undefined {
  const hold = holdOf(hole, length);
  if (!hold) return undefined;
  const { diameter } = fastenerThread(hole.screw!);
  const ceiling = preloadFromTorque({ torque: seatingTorque(hole.screw!, 'clamp'), diameter });
  const borne =
    hold.by === 'bearing'
      ? pressureWhileTightening(material)
      : allowableStress(material, { kind: 'shear', duration: 'moment', temperature: ROOM });
  const fresh = Math.min(hold.perMPa * borne, ceiling);
  const setBy = fresh < hold.perMPa * borne ? 'the screw' : hold.by;
  const bedded = hole.roof ? BEDDED_ON_BRIDGE : BEDDED;
  return { ...hold, fresh, torque: torqueForPreload({ preload: fresh, diameter }), setBy, bedded };
}

/** What is left of a fresh clamp force after years in the warmth: a held strain, which no strength limits further. */
export function clampLeft(
  { fresh, bedded }: Pick<ClampForce, 'fresh' | 'bedded'>,
  material: Material,
  temperature: number,
): number {
  const kept = strainKept(material, { hours: HOURS.years, temperature });
  return bedded * kept * stiffnessShare(material, temperature) * fresh;
}

/** A pattern as the bolting checks see it. */
export interface BoltedPattern {
  readonly hole: JointHole;
  readonly centres: readonly (readonly [number, number])[];
  /** of the hole in the plastic, mm */
  readonly length: number;
  /** how far what they hold lies on its seat along a unit vector, mm */
  readonly edge?: (along: readonly [number, number]) => number;
  /** from the axis to where the load acts, which is on it where none is told, mm */
  readonly lever?: number | undefined;
}

/**
 * Threaded length that the plastic offers, in diameters: the least of inserts and tapped holes.
 * @returns undefined where no screw ends in the plastic
 */
export function judgeEngagement(
  patterns: readonly BoltedPattern[],
  least: number,
  thicker: string,
): Outcome | undefined {
  const lengths = patterns.flatMap(({ hole: { joint, screw }, length }) =>
    screw !== undefined && holdsThread(joint) ? [length / fastenerThread(screw).diameter] : [],
  );
  if (lengths.length === 0) return undefined;
  const found = Math.min(...lengths);
  const cure = found < least ? `; a thicker ${thicker} holds more` : '';
  return valued(exactly(found), `${plain(found, 2)} diameters of thread${cure}`);
}

/** What a clamp is judged by. */
export interface Clamped extends Loaded {
  readonly material: Material;
  /** the way of the load that these screws carry; the other way a seat does */
  readonly carries: Pull;
}

/**
 * Clamp force that the screws of a pattern keep, against the load that pulls on them: the joint must not open, and the load
 * itself, which never relaxes, must not crush the plastic under the heads.
 */
export function judgeClamp(pattern: BoltedPattern, clamped: Clamped, limits: LimitsInForce): Outcome | undefined {
  const { hole, centres, length } = pattern;
  const { material, duty, carries } = clamped;
  const clamp = clampForce(hole, length, material);
  if (!clamp) return undefined;
  const missing = missingOf(duty);
  const cases = loadCases(clamped).flatMap((one) => {
    const most = pulledWith(pattern, one.pull === carries);
    return most > 0 ? [{ ...one, most }] : [];
  });
  if (cases.length === 0) {
    if (duty.load === undefined) return notJudged(...missing);
    return told('pass', 'the load presses the flange on its seat, which carries it; the screws only keep their place');
  }
  const temperature = judgedTemperature(duty);
  const left = clampLeft(clamp, material, temperature);
  const most = Math.max(...cases.map((one) => one.most));
  const rows = cases.flatMap((one) => reservesOf(one, { clamp, left, most: one.most, material, temperature }));
  const worst = rows.reduce((a, b) => (b.value / b.needed < a.value / a.needed ? b : a));
  const own = hard({ min: worst.needed });
  const fails = worst.value < (limits.of(own).pass.min ?? worst.needed);
  if (missing.length > 0 && !fails) return notJudged(...missing);
  const around = besideScrews(centres) ? 'screws on the other side too, ' : '';
  const cure = fails ? `; use ${around}more or larger screws, washers, inserts, or a plastic that creeps less` : '';
  const standing = Math.max(0, ...cases.map((one) => (one.duration === 'moment' ? 0 : one.most * one.force)));
  const loose = left < SHAKES_LOOSE * standing ? `; ${LOOSE_WORDS}` : '';
  return valued(
    exactly(worst.value),
    `${hole.screw} at ${plain(clamp.torque / 1000, 2)} N·m clamps ${plain(clamp.fresh, 0)} N, set by ${clamp.setBy}, and ${plain(left, 0)} N after years at ${plain(temperature, 0)} °C; ${centres.length} of them${pried(pattern, most)} ${worst.words}${loose}${cure}`,
    own,
  );
}

/**
 * Share of the load that pulls most on a screw: of one that the seat carries, what a lever lifts on its other side, which is what it would pull
 * less what is pressed.
 */
function pulledWith({ centres, lever = 0, edge }: BoltedPattern, isCarried: boolean): number {
  if (isCarried) return mostShare(centres, lever, edge);
  return lever === 0 ? 0 : Math.max(0, mostShare(centres, lever, edge) - 2 / centres.length);
}

/** In words, what a load beside a line of screws does to them, or one with a lever. */
function pried({ centres, lever = 0 }: BoltedPattern, most: number): string {
  if (lever > 0)
    return `, the load ${plain(lever)} mm beside, which pulls up to ${plain(most, 2)} times itself on each,`;
  const beside = besideScrews(centres);
  if (!beside) return '';
  return `, ${plain(beside.distance, 1)} mm beside the load, which pries up to ${plain(most, 1)} times itself on each,`;
}

interface Reserve {
  readonly value: number;
  readonly needed: number;
  readonly words: string;
}

function reservesOf(
  { force, duration }: LoadCase,
  at: { clamp: ClampForce; left: number; most: number; material: Material; temperature: number },
): Reserve[] {
  const { clamp, left, most, material, temperature } = at;
  const each = most * force;
  const kind = clamp.by === 'bearing' ? 'pressure' : 'shear';
  const borne = clamp.perMPa * allowableStress(material, { kind, duration, temperature });
  const against = `against ${plain(force, 0)} N${duration === 'moment' ? ', the motor stalled' : ''}`;
  return [
    { value: left / each, needed: duration === 'moment' ? RESERVE.moment : RESERVE.standing, words: against },
    {
      value: borne / each,
      needed: 1,
      words: `${against}, of which the plastic bears ${plain(borne, 0)} N a screw by ${clamp.by}`,
    },
  ];
}

/** What bears on the rim of a hole: a head, a washer or a nut. */
export interface HeadOnHole {
  readonly what: string;
  /** across it, mm */
  readonly across: number;
  readonly hole: Measured;
  /** nominal diameter of the screw, mm */
  readonly screw: number;
}

/** A ring under a head narrower than this crushes; the least that holds at all, mm. @source common-practice */
const HEAD_RING = { pass: 0.5, fail: 0.25 } as const;

/**
 * Whether what sits on a hole is held by it, and covers it all round wherever the screw stands in it.
 * @param rows   heads, washers and nuts of known screws
 * @param untold fields that would name the screws of holes that fit no listed one
 * @param limits those in force
 */
export function judgeHeads(
  rows: readonly HeadOnHole[],
  untold: readonly string[],
  limits: LimitsInForce,
): Outcome | undefined {
  const rings = rows.map((row) => {
    const ring = {
      least: row.across - row.hole.most,
      likely: row.across - row.hole.likely,
      most: row.across - row.hole.least,
    };
    const value = { least: ring.least / 2, likely: ring.likely / 2, most: ring.most / 2 };
    const own = soft({ min: Math.max(HEAD_RING.pass, (row.hole.likely - row.screw) / 2) }, { min: HEAD_RING.fail });
    return { ...row, value, own, wanted: limits.of(own).pass.min ?? 0 };
  });
  if (rings.length === 0) return untold.length > 0 ? notJudged(...untold) : undefined;
  const worst = rings.reduce((a, b) => (b.value.likely - b.wanted < a.value.likely - a.wanted ? b : a));
  const { what, across, hole, value, own, wanted } = worst;
  if (untold.length > 0 && value.likely >= HEAD_RING.fail) return notJudged(...untold);
  const found =
    value.likely <= 0
      ? `the ${what}, ${plain(across)} mm across, falls through a hole of ${worked(hole.likely, 'mm')} mm`
      : `the ${what}, ${plain(across)} mm across, bears on a ring ${worked(value.likely, 'mm')} mm wide around a hole of ${worked(hole.likely, 'mm')} mm`;
  const cure = value.likely < wanted ? '; use larger screws, smaller holes, or a plate washer made to size' : '';
  return valued(value, `${found}${cure}`, own);
}

/** How a pattern meets its screws. */
export interface PatternError {
  /** distance by which holes may be off, mm */
  readonly error: Measured;
  /** half the play of the screws in all holes they pass, as the holes come out */
  readonly play: Measured;
  readonly pattern: Pick<BoltedPattern, 'hole' | 'length'>;
  /** what else makes the error, in words; empty where nothing does */
  readonly cause: string;
  /** what cures it, where that is no larger hole or other pattern */
  readonly remedy?: string | undefined;
}

/** Whether every screw of a pattern goes in, all together. */
export function judgePosition(
  { error, play, pattern, cause, remedy }: PatternError,
  { material }: { readonly material: Material },
  limits: LimitsInForce,
): Outcome {
  const own = hard({ max: play.likely });
  const { max = play.likely } = limits.of(own).pass;
  const over = error.likely - max;
  const { screw } = pattern.hole;
  const forced =
    over > 0 && screw !== undefined
      ? `; forced in, a screw is pushed aside with up to ${plain(forcedScrewLoad({ diameter: fastenerThread(screw).diameter, length: pattern.length, miss: over, compressive: material.compressive }), 0)} N`
      : '';
  const cure =
    over > 0
      ? `; at least one screw does not go in, it misses by ${worked(over, 'mm')} mm${remedy ?? `: use holes ${upwards(2 * over)} mm larger, a matching pattern or an adapter`}${forced}`
      : '';
  return valued(
    widened(error, play.likely - play.least),
    `holes may be ${worked(error.likely, 'mm')} mm off${cause}; half the play is ${worked(play.likely, 'mm')} mm${max === play.likely ? '' : `, ${worked(max, 'mm')} mm are allowed by the sheet`}${cure}`,
    own,
  );
}

/** Error of a printed pattern: a known miss, and what shrink and scatter add. */
export function patternError(miss: Measured, shrink: Measured): Measured {
  return shifted(miss, Math.max(Math.abs(shrink.least), Math.abs(shrink.most)) / 2 + PLACE_SCATTER);
}

/** By how much holes at a measured spacing may miss, each. */
export function missRead(spacing: Measured): Measured {
  return { least: 0, likely: 0, most: (spacing.most - spacing.likely) / 2 };
}

/**
 * How far what stands in the holes of a printed pattern still moves each way: two holes that are δ too far apart leave f − δ in
 * their line, whichever way it goes.
 * @param play   half the play of what stands in a hole, f
 * @param miss   by which the pattern differs from what it goes on
 * @param shrink of its spacing, as it comes out
 */
export function playLeft(play: Measured, miss: Measured, shrink: Measured): Measured {
  const [least, most] = [shrink.least, shrink.most].map(Math.abs).sort((a, b) => a - b) as [number, number];
  const own = {
    least: shrink.least < 0 && shrink.most > 0 ? 0 : least / 2,
    likely: Math.abs(shrink.likely) / 2,
    most: most / 2 + PLACE_SCATTER,
  };
  return difference(play, sum(miss, own));
}
