import { fault } from '../../units/faults.js';
import type { SourceKey } from '../sources.js';

/** Face and shaft of a stepper motor frame [mm]. */
export interface MotorFrame {
  readonly frame: number;
  /** side of the square of the bolt holes */
  readonly boltSquare: number;
  /** diameter of the bolt circle */
  readonly boltCircle: number;
  readonly pilot: number;
  /** shaft diameter in the standard's table; for frame 14 common practice */
  readonly shaft: number;
  /** shaft diameters met in practice; from memory */
  readonly usualShafts: readonly number[];
  /** across a D-flat of the usual shaft, where one is usual; from memory, measure it */
  readonly flat?: number;
  readonly source: SourceKey;
}

const TABLE: readonly MotorFrame[] = [
  { frame: 14, boltSquare: 26, boltCircle: 36.77, pilot: 22, shaft: 5, usualShafts: [5], source: 'common-practice' },
  {
    frame: 17,
    boltSquare: 31,
    boltCircle: 43.81,
    pilot: 22,
    shaft: 5,
    usualShafts: [5],
    flat: 4.5,
    source: 'nema-ics-16',
  },
  {
    frame: 23,
    boltSquare: 47.14,
    boltCircle: 66.67,
    pilot: 38.1,
    shaft: 6.35,
    usualShafts: [6.35, 8],
    flat: 5.8,
    source: 'nema-ics-16',
  },
  {
    frame: 34,
    boltSquare: 69.6,
    boltCircle: 98.42,
    pilot: 73.03,
    shaft: 9.525,
    usualShafts: [12.7, 14],
    source: 'nema-ics-16',
  },
];

/** Motor frames in the table. */
export const MOTOR_FRAMES: readonly number[] = TABLE.map((row) => row.frame);

/**
 * Face and shaft of a stepper motor by its frame number.
 *
 * @param frame 14, 17, 23 or 34                             [-]
 * @returns bolt square, bolt circle, pilot, shaft, flat [mm]
 * @throws InputError frame is not in the table
 * @source nema-ics-16: squares, circles, pilots and table shafts of 17, 23, 34 confirmed
 * @source common-practice: frame 14, usual shafts, flats
 * @example motorFrame(17).boltSquare // 31 mm
 */
export function motorFrame(frame: number): MotorFrame {
  const row = TABLE.find((candidate) => candidate.frame === frame);
  if (row === undefined) throw fault('frame', frame, `must be one of ${MOTOR_FRAMES.join(', ')}`);
  return row;
}
