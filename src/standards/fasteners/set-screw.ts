import { type FastenerSize, fastenerRow } from './sizes.js';

/** A hexagon socket set screw with flat point [mm]. */
export interface SetScrew {
  /** s, key across flats */
  readonly key: number;
  /** t, least depth of the key */
  readonly keyDepth: number;
  /** dp, the most the flat point may be across */
  readonly point: number;
}

const TABLE: Readonly<Record<FastenerSize, SetScrew>> = {
  M2: { key: 0.9, keyDepth: 0.8, point: 1 },
  'M2.5': { key: 1.3, keyDepth: 1.2, point: 1.5 },
  M3: { key: 1.5, keyDepth: 1.2, point: 2 },
  M4: { key: 2, keyDepth: 1.5, point: 2.5 },
  M5: { key: 2.5, keyDepth: 2, point: 3.5 },
  M6: { key: 3, keyDepth: 2, point: 4 },
  M8: { key: 4, keyDepth: 3, point: 5.5 },
};

/**
 * Key and point of a set screw.
 *
 * @param size M2 to M8
 * @returns key, least key depth, most point diameter [mm]
 * @throws InputError size is not in the table
 * @source iso-4026: confirmed through the equivalent DIN 913
 * @example setScrew('M3').key // 1.5 mm
 */
export function setScrew(size: FastenerSize): SetScrew {
  return fastenerRow(TABLE, size);
}
