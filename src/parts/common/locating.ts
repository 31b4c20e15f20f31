import { type Bounds, type Outcome, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import type { ScrewEnds } from '../../mechanics/ends.js';
import { exactly } from '../../units/measured.js';
import type { Mounting } from './axial-path.js';

/** How shafts are joined at the motor: by a rigid sleeve, over a disc on which both stand, or by what gives along and across. */
export type JointKind = 'rigid' | 'disc' | 'flexible';

/**
 * How the ends of a screw count: a jaw coupling does not clamp its end, a rigid sleeve on the motor's two bearings does.
 *
 * @param held  whether its far end runs in something that leads it
 * @param joint what joins it to the motor
 * @source common-practice
 */
export function endsOf(held: boolean, joint: JointKind | undefined): ScrewEnds {
  if (!held) return 'fixed-free';
  return joint === 'rigid' ? 'fixed-supported' : 'supported';
}

/**
 * Places that carry a screw along its axis, in words: there must be one and no more. A thrust bearing and the motor's own behind a rigid
 * sleeve stand at the same end of the screw and count as one: between them it grows by some 12·10⁻⁶·60 mm·40 K = 0.03 mm, for which a
 * rotor on its spring gives way under a few newtons.
 *
 * @param p.holders       end holders that locate it, in words
 * @param p.thrustBearing a bearing and collar at the motor end do
 * @param p.joint         a rigid sleeve hands it to the motor's own bearing, a disc lets it stand on the motor's shaft
 * @param p.mounting      where the motor is
 * @source common-practice
 */
export function locatingPlaces(p: {
  readonly holders: readonly string[];
  readonly thrustBearing: boolean;
  readonly joint?: JointKind | undefined;
  readonly mounting?: Mounting | undefined;
}): string[] {
  const rigid = p.joint === 'rigid';
  const besides = rigid
    ? " (the motor's own behind the rigid sleeve gives way: set the collar, then tighten the sleeve)"
    : '';
  return [
    ...p.holders,
    ...(p.thrustBearing ? [`the thrust bearing at the motor end${besides}`] : []),
    ...(rigid && !p.thrustBearing ? ["the motor's own bearing, through the rigid sleeve"] : []),
    ...(p.joint === 'disc' && p.mounting === 'motor-below'
      ? ['the disc on which the screw stands, downwards only']
      : []),
  ];
}

/**
 * Exactly one place carries the screw along its axis.
 *
 * @param places what does, in words, of `locatingPlaces`
 * @param pass   how many there are to be
 * @param lacking what to do where nothing does
 */
export function judgeLocating(places: readonly string[], pass: Bounds, lacking: string): Outcome {
  const count = places.length;
  const cure = keeps(count, pass)
    ? ''
    : count > 1
      ? '; they fight each other when the screw warms: keep one'
      : count === 0
        ? `; nothing keeps it: ${lacking}`
        : '; the sheet wants another number';
  return valued(exactly(count), `${count === 0 ? 'none' : places.join(' and ')}${cure}`);
}
