import type { Designation } from '../standards/threads/designation.js';
import type { ThreadForm } from '../standards/threads/form.js';
import { leastRoot } from '../standards/tolerances/least-root.js';
import { fault } from '../units/faults.js';
import { plain } from '../units/format.js';
import { requirePositive, requireRange, requireWhole } from '../units/require.js';

/** A screw as its drive needs it; plain data. Lengths in mm, angles in degrees. */
export interface DriveScrew {
  /** its name; worked out from the form and sizes when missing */
  readonly designation?: string | undefined;
  /** `free` is a trapezoid of any flank angle */
  readonly form: ThreadForm | 'free';
  /** one flank against the plane across the axis, 0 to 60 */
  readonly flankAngle: number;
  readonly major: number;
  readonly pitch: number;
  /** travel of one turn, pitch × starts */
  readonly lead: number;
  readonly starts: number;
  readonly hand: 'right' | 'left';
  /** where the lead angle and the torque are taken */
  readonly pitchDiameter: number;
  /** root of the screw, which whirls and buckles: the least that its class allows */
  readonly minor: number;
  /** the same, should the screw be rolled; as `minor` when missing */
  readonly rolledMinor?: number | undefined;
}

/**
 * The drive's view of a parsed designation.
 * @example driveScrewOf(parseDesignation('Tr8x8(P2)')).lead // 8
 */
export function driveScrewOf(named: Designation): DriveScrew {
  const { text, form, flankAngle, major, pitch, lead, starts, hand, pitchDiameter } = named;
  const { cut, rolled } = leastRoot(named);
  const sizes = { major, pitch, lead, starts, pitchDiameter, minor: cut, rolledMinor: rolled };
  return { designation: text, form, flankAngle, hand, ...sizes };
}

/** The screw's own designation, or one line that describes it. */
export function screwName(screw: DriveScrew): string {
  if (screw.designation !== undefined) return screw.designation;
  const starts = screw.starts > 1 ? `, ${screw.starts} starts` : '';
  return `${screw.form} ${plain(screw.major)} x ${plain(screw.pitch)}${starts}${screw.hand === 'left' ? ', left-hand' : ''}`;
}

/** Throws an InputError for a screw that cannot be. */
export function requireDriveScrew(screw: DriveScrew): void {
  requirePositive('screw.major', screw.major);
  requirePositive('screw.pitch', screw.pitch);
  requirePositive('screw.lead', screw.lead);
  requireWhole('screw.starts', screw.starts, 1, 24);
  requireRange('screw.flankAngle', screw.flankAngle, 0, 60);
  requirePositive('screw.pitchDiameter', screw.pitchDiameter);
  requirePositive('screw.minor', screw.minor);
  if (screw.minor > screw.major) throw fault('screw.minor', screw.minor, 'must not be above the major diameter');
}
