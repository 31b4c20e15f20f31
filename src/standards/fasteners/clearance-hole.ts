import { fault } from '../../units/faults.js';
import { type FastenerSize, fastenerRow } from './sizes.js';

/** Series of clearance holes. */
const HOLE_SERIES = ['fine', 'medium', 'coarse'] as const;

/** A series of clearance holes. */
export type HoleSeries = (typeof HOLE_SERIES)[number];

/** [fine, medium, coarse] */
const TABLE: Readonly<Record<FastenerSize, readonly [number, number, number]>> = {
  M2: [2.2, 2.4, 2.6],
  'M2.5': [2.7, 2.9, 3.1],
  M3: [3.2, 3.4, 3.6],
  M4: [4.3, 4.5, 4.8],
  M5: [5.3, 5.5, 5.8],
  M6: [6.4, 6.6, 7],
  M8: [8.4, 9, 10],
};

/**
 * Diameter of a clearance hole.
 *
 * @param size M2 to M8
 * @param series fine, medium (the default) or coarse
 * @returns hole diameter [mm]
 * @throws InputError size or series is not in the table
 * @source iso-273: confirmed
 * @example clearanceHole('M3', 'medium') // 3.4 mm
 */
export function clearanceHole(size: FastenerSize, series: HoleSeries = 'medium'): number {
  const diameter = fastenerRow(TABLE, size)[HOLE_SERIES.indexOf(series)];
  if (diameter === undefined) throw fault('series', series, `must be one of ${HOLE_SERIES.join(', ')}`);
  return diameter;
}
