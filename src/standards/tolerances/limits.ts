import { tidy } from '../rounding.js';

/** Least and most [mm]. */
export type Limits = readonly [least: number, most: number];

/** Limits of size of a thread [mm]. */
export interface ThreadLimits {
  readonly major: Limits;
  readonly pitchDiameter: Limits;
  readonly minor: Limits;
}

/**
 * The diameter at which the flanks of a nut's groove would meet in a point. No standard limits the nut major above;
 * nothing of a nut lies beyond this diameter, so it stands as the upper limit.
 *
 *     D = D2 + P / (2·tan α)
 *
 * @param p.pitchDiameter  D2  the most the pitch diameter may be  [mm]  > 0
 * @param p.pitch          P   distance of neighbouring crests     [mm]  > 0
 * @param p.flankAngle     α   one flank                           [deg] > 0
 * @returns D                                                      [mm]
 * @source derived: the groove is half a pitch wide at the basic pitch diameter
 * @example sharpRoot({ pitchDiameter: 7.25, pitch: 2, flankAngle: 15 }) // 10.982 mm
 */
export function sharpRoot(p: {
  readonly pitchDiameter: number;
  readonly pitch: number;
  readonly flankAngle: number;
}): number {
  return tidy(p.pitchDiameter + p.pitch / (2 * Math.tan((p.flankAngle * Math.PI) / 180)));
}

/**
 * Two limits cleared of binary noise.
 *
 * @param least [mm]
 * @param most  [mm]
 * @returns the pair [mm]
 * @source derived: nine decimals
 * @example limits(7.82, 8) // [7.82, 8]
 */
export function limits(least: number, most: number): Limits {
  return [tidy(least), tidy(most)];
}
