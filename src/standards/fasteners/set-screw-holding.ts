import { fault } from '../../units/faults.js';
import { INCH } from '../rounding.js';

/** What a cup point set screw of a size can hold against the shaft. */
export interface SetScrewHolding {
  /** inch size of the table row */
  readonly size: string;
  /** nominal diameter of that size [mm] */
  readonly diameter: number;
  /** seating torque [N·mm] */
  readonly seatingTorque: number;
  /** axial or tangential force at the shaft surface [N]; an upper typical value */
  readonly force: number;
}

/** [size, diameter in, seating torque lbf·in, holding power lbf] */
const TABLE: readonly (readonly [string, number, number, number])[] = [
  ['#0', 0.06, 1, 50],
  ['#1', 0.073, 1.8, 65],
  ['#2', 0.086, 1.8, 85],
  ['#3', 0.099, 5, 120],
  ['#4', 0.112, 5, 160],
  ['#5', 0.125, 10, 200],
  ['#6', 0.138, 10, 250],
  ['#8', 0.164, 20, 385],
  ['#10', 0.19, 36, 540],
  ['1/4', 0.25, 87, 1000],
  ['5/16', 0.3125, 165, 1500],
  ['3/8', 0.375, 290, 2000],
  ['7/16', 0.4375, 430, 2500],
  ['1/2', 0.5, 620, 3000],
  ['9/16', 0.5625, 620, 3500],
  ['5/8', 0.625, 1325, 4000],
  ['3/4', 0.75, 2400, 5000],
  ['7/8', 0.875, 5200, 6000],
  ['1', 1, 7200, 7000],
];

const POUND_FORCE = 4.4482216152605;

/**
 * Holding force of a cup point set screw on a steel shaft: the row of the largest inch size that is not above the
 * diameter given. Divide by 1.5 to 2 for a steady load, by 4 to 8 for a changing one; torque is force × shaft / 2.
 *
 * @param p.diameter nominal diameter of the set screw       [mm]  1.5 to 26
 * @returns size of the row, seating torque [N·mm], holding force [N]
 * @throws InputError diameter is outside the table
 * @validity metal screw seated in metal hub and shaft; another chart prints half to a third of these forces
 * @source textbook-design: table 7-4, seating torques confirmed against a second chart
 * @source memory: holding forces
 * @example setScrewHolding({ diameter: 5 }).size // '#10'
 */
export function setScrewHolding(p: { readonly diameter: number }): SetScrewHolding {
  const row = TABLE.findLast(([, inches]) => inches * INCH <= p.diameter + 1e-9);
  if (row === undefined || !(p.diameter <= 26)) throw fault('diameter', p.diameter, 'must be 1.5 to 26');
  const [size, inches, torque, force] = row;
  return { size, diameter: inches * INCH, seatingTorque: torque * POUND_FORCE * INCH, force: force * POUND_FORCE };
}
