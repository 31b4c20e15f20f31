import { type FastenerSize, fastenerRow } from './sizes.js';

/** A plain washer [mm]. */
export interface Washer {
  /** d1, hole */
  readonly inside: number;
  /** d2 */
  readonly outside: number;
  /** h */
  readonly thickness: number;
}

const TABLE: Readonly<Record<FastenerSize, Washer>> = {
  M2: { inside: 2.2, outside: 5, thickness: 0.3 },
  'M2.5': { inside: 2.7, outside: 6, thickness: 0.5 },
  M3: { inside: 3.2, outside: 7, thickness: 0.5 },
  M4: { inside: 4.3, outside: 9, thickness: 0.8 },
  M5: { inside: 5.3, outside: 10, thickness: 1 },
  M6: { inside: 6.4, outside: 12, thickness: 1.6 },
  M8: { inside: 8.4, outside: 16, thickness: 1.6 },
};

/**
 * A plain washer of the normal series.
 *
 * @param size M2 to M8
 * @returns inside, outside, thickness [mm]
 * @throws InputError size is not in the table
 * @source iso-7089: M3 to M8 confirmed
 * @source memory: M2 and M2.5
 * @example washer('M3').outside // 7 mm
 */
export function washer(size: FastenerSize): Washer {
  return fastenerRow(TABLE, size);
}
