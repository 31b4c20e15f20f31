import { fault } from '../../units/faults.js';

/** A thrust bearing with both of its washers [mm]. */
export interface ThrustBearing {
  /** d, of the washer that sits on the shaft */
  readonly bore: number;
  /** D, of the washer that lies in the housing */
  readonly outside: number;
  /** T, of balls or needles and both washers together */
  readonly height: number;
}

const row = (bore: number, outside: number, height: number): ThrustBearing => ({ bore, outside, height });

/** Both washers of a needle cage are 1 mm thick, its needles 2 mm. */
const needle = (bore: number, outside: number): ThrustBearing => row(bore, outside, 4);

const TABLE = {
  'F4-10': row(4, 10, 4),
  'F5-10': row(5, 10, 4),
  'F5-12': row(5, 12, 4),
  'F6-12': row(6, 12, 4.5),
  'F6-14': row(6, 14, 5),
  'F8-16': row(8, 16, 5),
  'F8-19': row(8, 19, 7),
  'F9-20': row(9, 20, 7),
  'F10-18': row(10, 18, 5.5),
  '51100': row(10, 24, 9),
  '51101': row(12, 26, 9),
  '51102': row(15, 28, 9),
  '51103': row(17, 30, 9),
  '51104': row(20, 35, 10),
  '51200': row(10, 26, 11),
  '51201': row(12, 28, 11),
  '51202': row(15, 32, 12),
  '51203': row(17, 35, 12),
  '51204': row(20, 40, 14),
  AXK0515: needle(5, 15),
  AXK0619: needle(6, 19),
  AXK0821: needle(8, 21),
  AXK1024: needle(10, 24),
  AXK1226: needle(12, 26),
  AXK1528: needle(15, 28),
  AXK1730: needle(17, 30),
  AXK2035: needle(20, 35),
} as const satisfies Readonly<Record<string, ThrustBearing>>;

export type ThrustDesignation = keyof typeof TABLE;

/** Designations that are known, the smallest of each series first. */
export const THRUST_DESIGNATIONS = Object.keys(TABLE).sort() as [ThrustDesignation, ...ThrustDesignation[]];

/**
 * Boundary dimensions of a thrust bearing by its designation.
 *
 * @param designation  a ball bearing of the series 511 or 512, one of the trade sizes below them (F bore-outside), or a
 *                     needle cage with two washers of 1 mm (AXK)
 * @returns bore, outside and height of the whole [mm]
 * @throws InputError  the designation is not in the table
 * @source iso-104: 51100, 51101 and 51104 confirmed
 * @source memory: the other rows of 511 and 512, the trade sizes from F6-14 on, needle cages but AXK1730 and AXK2035
 * @example thrustBearing('51100').outside // 24 mm
 */
export function thrustBearing(designation: ThrustDesignation): ThrustBearing {
  if (!Object.hasOwn(TABLE, designation))
    throw fault('designation', designation, `must be one of ${THRUST_DESIGNATIONS.join(', ')}`);
  return TABLE[designation];
}

/** The two washers stand out of their pocket in the plate by this, so that the collar never rubs, mm. @source common-practice */
const STANDS_OUT = 0.5;

/** Room of a pocket around a bearing that its shaft centres, on the diameter: 0.3 to 0.5, mm. @source common-practice */
const POCKET_ROOM = 0.4;

/**
 * Pocket in a plate for a thrust bearing that its shaft centres.
 *
 *     ⌀ = D + 0.4      depth = T − 0.5
 *
 * @param bearing.outside  D  [mm]  > 0
 * @param bearing.height   T  [mm]  > 0.5
 * @returns diameter and depth [mm]
 * @source common-practice
 * @example platePocket({ outside: 24, height: 9 }).depth // 8.5 mm
 */
export function platePocket({ outside, height }: Pick<ThrustBearing, 'outside' | 'height'>): {
  readonly diameter: number;
  readonly depth: number;
} {
  return { diameter: outside + POCKET_ROOM, depth: height - STANDS_OUT };
}
