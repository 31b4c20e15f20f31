import { fault } from '../../units/faults.js';

/** [over, up to and including, H7 upper µm, h6 lower µm] */
const TABLE: readonly (readonly [number, number, number, number])[] = [
  [0, 3, 10, -6],
  [3, 6, 12, -8],
  [6, 10, 15, -9],
  [10, 18, 18, -11],
  [18, 30, 21, -13],
];

/** The sliding fit of a bore H7 on a shaft h6, diametral [mm]. */
export interface SlidingFit {
  /** upper deviation of the bore H7; its lower one is 0 */
  readonly boreUpper: number;
  /** lower deviation of the shaft h6, below 0; its upper one is 0 */
  readonly shaftLower: number;
  /** the most diametral clearance; the least is 0 */
  readonly mostDiametralClearance: number;
}

/**
 * Deviations of the fit H7/h6.
 *
 * @param diameter nominal diameter                          [mm]  above 0, to 30
 * @returns deviations and most diametral clearance          [mm]
 * @throws InputError diameter is outside the table
 * @source iso-286: confirmed; H7 to 3 mm from memory and rule
 * @example slidingFit(8).mostDiametralClearance // 0.024 mm
 */
export function slidingFit(diameter: number): SlidingFit {
  const row = TABLE.find(([over, to]) => diameter > over && diameter <= to);
  if (row === undefined) throw fault('diameter', diameter, 'must be above 0, up to 30');
  const [, , bore, shaft] = row;
  return { boreUpper: bore / 1000, shaftLower: shaft / 1000, mostDiametralClearance: (bore - shaft) / 1000 };
}
