import { fault } from '../../units/faults.js';

/** A metric motor shaft: how much smaller than nominal it may be, and its key [mm]. */
export interface MotorShaft {
  readonly diameter: number;
  /** lower deviation, below 0; the upper one is 0 */
  readonly lower: number;
  /** key width and height where the table has one */
  readonly key?: readonly [width: number, height: number];
}

const TABLE: readonly MotorShaft[] = [
  { diameter: 5, lower: -0.008 },
  { diameter: 6, lower: -0.008 },
  { diameter: 7, lower: -0.009, key: [2, 2] },
  { diameter: 8, lower: -0.009, key: [2, 2] },
  { diameter: 9, lower: -0.009, key: [3, 3] },
  { diameter: 10, lower: -0.009, key: [3, 3] },
  { diameter: 11, lower: -0.011, key: [4, 4] },
  { diameter: 14, lower: -0.011, key: [5, 5] },
  { diameter: 16, lower: -0.011, key: [5, 5] },
  { diameter: 19, lower: -0.013, key: [6, 6] },
  { diameter: 24, lower: -0.013, key: [8, 7] },
];

/**
 * Tolerance and key of a metric motor shaft.
 *
 * @param diameter nominal diameter, a row of the table      [mm]
 * @returns lower deviation and key [mm]
 * @throws InputError diameter is not in the table
 * @source nema-ics-16: metric shafts, confirmed
 * @example motorShaft(5).lower // -0.008 mm
 */
export function motorShaft(diameter: number): MotorShaft {
  const row = TABLE.find((candidate) => candidate.diameter === diameter);
  if (row === undefined) {
    throw fault('diameter', diameter, `must be one of ${TABLE.map((shaft) => shaft.diameter).join(', ')}`);
  }
  return row;
}
