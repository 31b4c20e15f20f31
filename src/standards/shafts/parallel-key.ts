import { fault } from '../../units/faults.js';

/** A parallel key and its keyways [mm]. */
export interface ParallelKey {
  /** b */
  readonly width: number;
  /** h */
  readonly height: number;
  /** t1 */
  readonly shaftDepth: number;
  /** t2 */
  readonly hubDepth: number;
}

/** [over, up to and including, b, h, t1, t2] */
const TABLE: readonly (readonly [number, number, number, number, number, number])[] = [
  [6, 8, 2, 2, 1.2, 1],
  [8, 10, 3, 3, 1.8, 1.4],
  [10, 12, 4, 4, 2.5, 1.8],
  [12, 17, 5, 5, 3, 2.3],
  [17, 22, 6, 6, 3.5, 2.8],
  [22, 30, 8, 7, 4, 3.3],
];

/**
 * Parallel key and keyway depths for a shaft.
 *
 * @param diameter shaft diameter                            [mm]  over 6, to 30
 * @returns width, height, depths in shaft and hub           [mm]
 * @throws InputError diameter is outside the table
 * @source din-6885: confirmed; ranges are over, up to and including
 * @example parallelKey(14).width // 5 mm
 */
export function parallelKey(diameter: number): ParallelKey {
  const row = TABLE.find(([over, to]) => diameter > over && diameter <= to);
  if (row === undefined) throw fault('diameter', diameter, 'must be above 6, up to 30');
  const [, , width, height, shaftDepth, hubDepth] = row;
  return { width, height, shaftDepth, hubDepth };
}
