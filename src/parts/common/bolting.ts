import { hard, notJudged, type Outcome, soft, valued } from '../../fit/check.js';
import { forcedScrewLoad } from '../../mechanics/bolt/forced-screw.js';
import { preloadFromTorque, pressureUnderHead, torqueForPreload } from '../../mechanics/bolt/preload.js';
import { pullOutForce } from '../../mechanics/bolt/pull-out.js';
import { BEDDED, BEDDED_ON_BRIDGE } from '../../mechanics/strength/relaxation.js';
import type { Material } from '../../presets/material.js';
import type { DutySheet } from '../../sheet/sections/duty.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import { fastenerThread } from '../../standards/fasteners/sizes.js';
import { seatingTorque } from '../../standards/fasteners/tightening.js';
import { plain } from '../../units/format.js';
import { exactly, type Measured, shifted } from '../../units/measured.js';
import { boreOf, headRadius, type JointHole, threadReach, washerRadius } from './joints.js';
import { PLACE_SCATTER } from './residual.js';

/** Clamp force for every newton that pulls on the joint: the joint must not open when the load jerks. */
const CLAMP_RESERVE = 2;

/** What one screw of a joint may clamp with for years. */
export interface ClampForce {
  /** N */
  readonly force: number;
  /** N·mm */
  readonly torque: number;
  /** MPa under head, washer or nut; undefined where a thread in the plastic holds */
  readonly pressure?: number;
  readonly by: 'bearing' | 'pull-out' | 'the screw';
}

/**
 * Force that a joint in this plastic keeps: pressure under head or nut, or pull-out, at the long-term share of the
 * strength; never more than the screw's own seating torque gives.
 * @param length  of the hole in the plastic, mm
 * @returns undefined where no listed screw passes
 */
export function clampForce(hole: JointHole, length: number, material: Material): ClampForce | undefined {
  const { screw, joint } = hole;
  if (screw === undefined) return undefined;
  const { diameter } = fastenerThread(screw);
  const ceiling = preloadFromTorque({ torque: seatingTorque(screw, 'clamp'), diameter });
  const capped = (force: number, by: 'bearing' | 'pull-out'): ClampForce => {
    const kept = Math.min(force, ceiling) * (hole.roof ? BEDDED_ON_BRIDGE / BEDDED : 1);
    return { force: kept, torque: torqueForPreload({ preload: kept, diameter }), by: kept < force ? 'the screw' : by };
  };
  if (joint === 'insert' || joint === 'tapped') {
    const held = {
      diameter: joint === 'insert' ? boreOf(hole) : diameter,
      length: Math.min(length, threadReach(screw)),
    };
    return capped(material.shares.years * pullOutForce({ ...held, shear: material.shear }), 'pull-out');
  }
  const seat = { headDiameter: seatDiameter(hole), holeDiameter: hole.diameter };
  if (!(seat.headDiameter > seat.holeDiameter)) return undefined;
  const perNewton = pressureUnderHead({ preload: 1, ...seat });
  const clamp = capped((material.shares.years * material.compressive) / perNewton, 'bearing');
  return { ...clamp, pressure: clamp.force * perNewton };
}

/** Diameter of what bears on the plastic: a washer under a proud head, a bare head in its counterbore, a nut's flats. */
function seatDiameter(hole: JointHole): number {
  if (hole.joint === 'through' || (hole.joint === 'counterbore' && hole.roof)) return 2 * washerRadius(hole);
  if (hole.joint === 'hexagon' && hole.screw !== undefined) return hexNut(hole.screw).acrossFlats;
  return 2 * headRadius(hole) - 0.5;
}

/** A pattern as the bolting checks see it. */
export interface BoltedPattern {
  readonly hole: JointHole;
  readonly count: number;
  /** of the hole in the plastic, mm */
  readonly length: number;
}

/** Clamp force of all screws of a pattern against the load that pulls on them. */
export function judgeClamp(
  { hole, count, length }: BoltedPattern,
  { material, duty }: { readonly material: Material; readonly duty: DutySheet },
): Outcome | undefined {
  const clamp = clampForce(hole, length, material);
  if (!clamp) return undefined;
  if (duty.load === undefined) return notJudged('duty.load');
  const reserve = (count * clamp.force) / duty.load;
  const under = clamp.pressure === undefined ? '' : `, ${plain(clamp.pressure, 1)} MPa under the head`;
  const cure = reserve < CLAMP_RESERVE ? '; use more or larger screws, washers, inserts or a stronger material' : '';
  return valued(
    exactly(reserve),
    `${hole.screw} at ${plain(clamp.torque / 1000, 2)} N·m clamps ${plain(clamp.force, 0)} N${under}, set by ${clamp.by}; ${count} of them against ${plain(duty.load, 0)} N${cure}`,
    soft({ min: CLAMP_RESERVE }, { min: 1 }),
  );
}

/** How a pattern meets its screws. */
export interface PatternError {
  /** distance by which holes may be off, mm */
  readonly error: Measured;
  /** half the play of the screws in all holes they pass */
  readonly play: number;
  readonly pattern: BoltedPattern;
  /** what else makes the error, in words; empty where nothing does */
  readonly cause: string;
}

/** Whether every screw of a pattern goes in, all together. */
export function judgePosition(
  { error, play, pattern, cause }: PatternError,
  { material }: { readonly material: Material },
): Outcome {
  const over = error.likely - play;
  const { screw } = pattern.hole;
  const forced =
    over > 0 && screw !== undefined
      ? `; forced in, a screw is pushed aside with up to ${plain(forcedScrewLoad({ diameter: fastenerThread(screw).diameter, length: pattern.length, miss: over, compressive: material.compressive }), 0)} N`
      : '';
  const cure =
    over > 0
      ? `; at least one screw does not go in, it misses by ${plain(over)} mm: use holes ${plain(2 * over)} mm larger, a matching pattern or an adapter${forced}`
      : '';
  return valued(
    error,
    `holes may be ${plain(error.likely)} mm off${cause}; half the play is ${plain(play)} mm${cure}`,
    hard({ max: play }),
  );
}

/** Error of a printed pattern: a known miss, and what shrink and scatter add. */
export function patternError(miss: Measured, shrink: Measured): Measured {
  return shifted(miss, Math.max(Math.abs(shrink.least), Math.abs(shrink.most)) / 2 + PLACE_SCATTER);
}
