import { fault } from '../../units/faults.js';

/** Metric fasteners a part can be held with. */
export const FASTENER_SIZES = ['M2', 'M2.5', 'M3', 'M4', 'M5', 'M6', 'M8'] as const;

/** A metric fastener size. */
export type FastenerSize = (typeof FASTENER_SIZES)[number];

/** Nominal diameter and coarse pitch by size [mm]. */
const THREADS: Readonly<Record<FastenerSize, { readonly diameter: number; readonly pitch: number }>> = {
  M2: { diameter: 2, pitch: 0.4 },
  'M2.5': { diameter: 2.5, pitch: 0.45 },
  M3: { diameter: 3, pitch: 0.5 },
  M4: { diameter: 4, pitch: 0.7 },
  M5: { diameter: 5, pitch: 0.8 },
  M6: { diameter: 6, pitch: 1 },
  M8: { diameter: 8, pitch: 1.25 },
};

/**
 * The row of a table for a fastener size.
 *
 * @param table rows by size
 * @param size M2 to M8
 * @returns the row
 * @throws InputError the table has no such size
 * @source common-practice: sizes listed are those met in small machines
 * @example fastenerRow({ M3: 5.5 }, 'M3') // 5.5
 */
export function fastenerRow<Row>(table: Readonly<Partial<Record<FastenerSize, Row>>>, size: FastenerSize): Row {
  const row = Object.hasOwn(table, size) ? table[size] : undefined;
  if (row === undefined) throw fault('size', size, `must be one of ${Object.keys(table).join(', ')}`);
  return row;
}

/**
 * Nominal diameter and coarse pitch of a fastener.
 *
 * @param size M2 to M8
 * @returns diameter and pitch [mm]
 * @throws InputError size is not in the table
 * @source iso-261: coarse pitches, confirmed
 * @example fastenerThread('M3').pitch // 0.5 mm
 */
export function fastenerThread(size: FastenerSize): { readonly diameter: number; readonly pitch: number } {
  return fastenerRow(THREADS, size);
}
