import { type FastenerSize, fastenerRow } from './sizes.js';

/** A hexagon nut [mm]. */
export interface HexNut {
  /** s, across flats */
  readonly acrossFlats: number;
  /** e, the least across corners */
  readonly acrossCorners: number;
  /** m, the most it may be high */
  readonly height: number;
}

/** [s, e min, m max] */
const TABLE: Readonly<Record<FastenerSize, readonly [number, number, number]>> = {
  M2: [4, 4.32, 1.6],
  'M2.5': [5, 5.45, 2],
  M3: [5.5, 6.01, 2.4],
  M4: [7, 7.66, 3.2],
  M5: [8, 8.79, 4.7],
  M6: [10, 11.05, 5.2],
  M8: [13, 14.38, 6.8],
};

/**
 * A regular hexagon nut.
 *
 * @param size M2 to M8
 * @returns across flats, least across corners, most height [mm]
 * @throws InputError size is not in the table
 * @source iso-4032: confirmed
 * @example hexNut('M3').height // 2.4 mm
 */
export function hexNut(size: FastenerSize): HexNut {
  const [acrossFlats, acrossCorners, height] = fastenerRow(TABLE, size);
  return { acrossFlats, acrossCorners, height };
}
