import { type FastenerSize, fastenerRow } from './sizes.js';

/** A hexagon socket head cap screw [mm]. */
export interface CapScrew {
  /** dk, the most a plain head may be across */
  readonly headDiameter: number;
  /** dk, the most a knurled head may be across */
  readonly headDiameterKnurled: number;
  /** k, the most the head may be high */
  readonly headHeight: number;
  /** s, key across flats */
  readonly key: number;
  /** usual lengths under the head; from memory */
  readonly lengths: readonly number[];
}

const LENGTHS = [3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80];
const lengths = (least: number, most: number) => LENGTHS.filter((length) => length >= least && length <= most);

const TABLE: Readonly<Record<FastenerSize, CapScrew>> = {
  M2: { headDiameter: 3.8, headDiameterKnurled: 3.98, headHeight: 2, key: 1.5, lengths: lengths(3, 20) },
  'M2.5': { headDiameter: 4.5, headDiameterKnurled: 4.68, headHeight: 2.5, key: 2, lengths: lengths(4, 25) },
  M3: { headDiameter: 5.5, headDiameterKnurled: 5.68, headHeight: 3, key: 2.5, lengths: lengths(5, 30) },
  M4: { headDiameter: 7, headDiameterKnurled: 7.22, headHeight: 4, key: 3, lengths: lengths(6, 40) },
  M5: { headDiameter: 8.5, headDiameterKnurled: 8.72, headHeight: 5, key: 4, lengths: lengths(8, 50) },
  M6: { headDiameter: 10, headDiameterKnurled: 10.22, headHeight: 6, key: 5, lengths: lengths(10, 60) },
  M8: { headDiameter: 13, headDiameterKnurled: 13.27, headHeight: 8, key: 6, lengths: lengths(12, 80) },
};

/**
 * Head, key and usual lengths of a hexagon socket head cap screw.
 *
 * @param size M2 to M8
 * @returns head diameters, head height, key, lengths [mm]
 * @throws InputError size is not in the table
 * @source iso-4762: heads and keys confirmed
 * @source memory: length series
 * @example socketCapScrew('M3').headDiameter // 5.5 mm
 */
export function socketCapScrew(size: FastenerSize): CapScrew {
  return fastenerRow(TABLE, size);
}
