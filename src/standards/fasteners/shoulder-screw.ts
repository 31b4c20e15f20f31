import { type FastenerSize, fastenerRow } from './sizes.js';

/** A hexagon socket head shoulder screw [mm]. */
export interface ShoulderScrew {
  /** nominal diameter of the shoulder, and its limits */
  readonly shoulder: number;
  readonly least: number;
  readonly most: number;
  readonly headDiameter: number;
  readonly headHeight: number;
}

/** A shoulder is as long as it says, or longer by up to this [mm]. */
export const SHOULDER_LONGER = 0.25;

/** Usual lengths of the shoulder [mm]. */
export const SHOULDER_LENGTHS = [10, 12, 16, 20, 25, 30, 40, 50] as const;

const TABLE: Readonly<Partial<Record<FastenerSize, ShoulderScrew>>> = {
  M5: { shoulder: 6, least: 5.96, most: 5.99, headDiameter: 10.2, headHeight: 4.5 },
  M6: { shoulder: 8, least: 7.951, most: 7.987, headDiameter: 13.3, headHeight: 5.5 },
  M8: { shoulder: 10, least: 9.951, most: 9.987, headDiameter: 16.3, headHeight: 7 },
};

/**
 * The shoulder screw whose thread is of a size.
 *
 * @param size of its thread: M5, M6 or M8
 * @returns shoulder and head [mm]
 * @throws InputError no shoulder screw has such a thread
 * @source iso-7379: confirmed
 * @example shoulderScrew('M5').shoulder // 6 mm
 */
export function shoulderScrew(size: FastenerSize): ShoulderScrew {
  return fastenerRow(TABLE, size);
}
