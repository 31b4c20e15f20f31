import type { Mounting } from './axial-path.js';

/** How shafts are joined at the motor: by a rigid sleeve, over a disc on which both stand, or by what gives along and across. */
export type JointKind = 'rigid' | 'disc' | 'flexible';

/**
 * Places that carry a screw along its axis, in words: there must be one and no more.
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
  return [
    ...p.holders,
    ...(p.thrustBearing ? ['the thrust bearing at the motor end'] : []),
    ...(p.joint === 'rigid' ? ["the motor's own bearing, through the rigid sleeve"] : []),
    ...(p.joint === 'disc' && p.mounting === 'motor-below'
      ? ['the disc on which the screw stands, downwards only']
      : []),
  ];
}
