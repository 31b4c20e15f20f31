import { requirePositive, requireRange } from '../units/require.js';
import { cosd, sind } from './angles.js';

/** A straight-flanked ridge on a cylinder: a screw's thread, or the groove a nut's cutter leaves. */
export interface RidgeOptions {
  readonly pitch: number;
  /** one flank to the normal of the axis, degrees; 15 for a 30° trapezoid */
  readonly flankAngle: number;
  /** diameter at which the ridge's width is stated, mm */
  readonly pitchDiameter: number;
  /** axial width of the ridge at the pitch diameter, mm, below the pitch */
  readonly widthAtPitchDiameter: number;
  /** top of the ridge, mm; lower where the flanks meet before it */
  readonly major: number;
  /** foot of the ridge, mm; higher where neighbouring flanks meet before it */
  readonly minor: number;
}

/**
 * One pitch of a thread in a plane through the axis, the ridge's middle at z = 0. A nut's cutter and a screw drawn with it mesh:
 * the nut's groove of start 1 lies on +X at z = 0, and so does the screw's ridge.
 *
 *     width(d) = w − (d − d2)·tan α
 *
 * @param ridge  diameters d2, major, minor, width w and flank α  [mm, degrees]
 * @returns [z, radius], z rising in [0, pitch): four corners, or three where two flanks meet  [mm]
 * @throws InputError  a length is not above 0, or the flank is outside 1 to 60 degrees
 * @source geometry of a straight flank
 * @example ridgeCorners({ pitch: 2, flankAngle: 15, pitchDiameter: 7, widthAtPitchDiameter: 1, major: 8, minor: 6 })[0] // [0.366, 4]
 */
export function ridgeCorners(ridge: RidgeOptions): readonly (readonly [number, number])[] {
  const { pitch, flankAngle, pitchDiameter, widthAtPitchDiameter, major, minor } = ridge;
  requirePositive('pitch', pitch);
  requireRange('flankAngle', flankAngle, 1, 60);
  requireRange('widthAtPitchDiameter', widthAtPitchDiameter, 0, pitch);
  requirePositive('minor', minor);
  requirePositive('major', major - minor);
  const slope = sind(flankAngle) / cosd(flankAngle);
  const width = (diameter: number) => widthAtPitchDiameter - (diameter - pitchDiameter) * slope;
  const top = Math.min(major, pitchDiameter + widthAtPitchDiameter / slope);
  const foot = Math.max(minor, pitchDiameter - (pitch - widthAtPitchDiameter) / slope);
  const [topHalf, footHalf] = [width(top) / 2, width(foot) / 2];
  const sharpTop = topHalf < pitch * 1e-6;
  const sharpFoot = pitch / 2 - footHalf < pitch * 1e-6;
  const corners: (readonly [number, number])[] = [[sharpTop ? 0 : topHalf, top / 2]];
  if (sharpFoot) corners.push([pitch / 2, foot / 2]);
  else corners.push([footHalf, foot / 2], [pitch - footHalf, foot / 2]);
  if (!sharpTop) corners.push([pitch - topHalf, top / 2]);
  return corners;
}
