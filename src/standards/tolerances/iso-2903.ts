import { fault } from '../../units/faults.js';
import { requireWhole } from '../../units/require.js';
import { trapezoidalSizes } from '../threads/trapezoidal.js';
import { PAIR_ROWS, type PairRow, PITCH_ROWS, type PitchRow, RANGES } from './iso-2903-table.js';
import { limits, sharpRoot, type ThreadLimits } from './limits.js';
import { preferredNumber } from './preferred-numbers.js';

/** Size of a trapezoidal thread. */
export interface TrapezoidalThread {
  /** nominal major diameter [mm] */
  readonly major: number;
  /** distance of neighbouring crests [mm] */
  readonly pitch: number;
  readonly starts: number;
}

/** Tolerance classes of a trapezoidal screw. */
const TRAPEZOIDAL_SCREW_CLASSES = ['7e', '8e', '8c', '9c'] as const;
/** Tolerance classes of a trapezoidal nut. */
const TRAPEZOIDAL_NUT_CLASSES = ['7H', '8H', '9H'] as const;

/**
 * Factor on Td2 and TD2 of a multi-start trapezoidal thread: 1, 1.12, 1.25, 1.4, and 1.6 from five starts on.
 *
 * @param starts number of threads side by side                [-]  whole, 1 or above
 * @returns factor on the pitch diameter tolerance             [-]
 * @throws InputError starts is no whole number from 1
 * @source iso-2903: multi-start threads
 * @source memory: the factors
 * @example multiStartFactor(4) // 1.4
 */
export function multiStartFactor(starts: number): number {
  requireWhole('starts', starts, 1, 100);
  return [1, 1.12, 1.25, 1.4][starts - 1] ?? 1.6;
}

function pitchRow(pitch: number): PitchRow {
  const row = PITCH_ROWS.get(pitch);
  if (row !== undefined) return row;
  if (!(pitch >= 1 && pitch <= 14))
    throw fault('designation', `pitch ${pitch} mm`, 'ISO 2903 has no tolerances for it; 1 to 14 mm');
  const e = preferredNumber(50 + 11 * pitch);
  return {
    e: -e,
    c: -preferredNumber(2 * e),
    screwMajor: preferredNumber(0.63 * (180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch))),
    nutMinor: preferredNumber(0.63 * 230 * pitch ** 0.7),
  };
}

/** The row of a diameter and pitch; a pitch that is not in the table follows the rule of its diameter range. */
function pairRow(major: number, pitch: number): PairRow {
  const range = RANGES.find(([over, to]) => major > over && major <= to);
  if (range === undefined) {
    throw fault('designation', `${major} mm`, 'ISO 2903 has no range for this diameter; above 5.6, up to 90 mm');
  }
  const [over, to] = range;
  const row = PAIR_ROWS.find((candidate) => candidate.over === over && candidate.pitch === pitch);
  if (row !== undefined) return row;
  const grade6 = 90 * pitch ** 0.4 * Math.sqrt(over * to) ** 0.1;
  const grades = (steps: number) =>
    [4, 8, 12].map((grade) => preferredNumber(grade6, grade + steps)) as [number, number, number];
  return { over, to, pitch, screw: grades(0), nut: grades(5) };
}

function gradeOf(row: readonly [number, number, number], tolerance: string): number {
  return row[Number(tolerance[0]) - 7]!;
}

function requireClass(tolerance: string, classes: readonly string[]): void {
  if (!classes.includes(tolerance)) throw fault('tolerance', tolerance, `must be one of ${classes.join(', ')}`);
}

/**
 * Limits of size of a trapezoidal screw.
 *
 *     major: d − Td … d
 *     pitch diameter: d2 + es − Td2·k … d2 + es
 *     minor: d3 − (1.25·Td2·k + |es|) … d3         k by starts, `multiStartFactor`
 *
 * A pair of diameter and pitch that is not in the table follows the rule of the standard for its range:
 * Td2 of grade 6 = 90·P^0.4·d^0.1 µm with d the geometric mean of the range, rounded to R40, four steps a grade.
 *
 * @param thread major and pitch [mm], starts
 * @param tolerance 7e, 8e, 8c or 9c
 * @returns limits of size                                     [mm]
 * @throws InputError the class is none of these, or the standard has no range for the size
 * @validity diameter above 5.6 to 90 mm, pitch 1 to 14 mm
 * @source iso-2903: Td and es confirmed to pitch 4, Td2 of grade 7 in part; see the table for the rest
 * @example trapezoidalScrewLimits({ major: 8, pitch: 2, starts: 1 }, '7e').pitchDiameter // [6.739, 6.929]
 */
export function trapezoidalScrewLimits(thread: TrapezoidalThread, tolerance: string): ThreadLimits {
  requireClass(tolerance, TRAPEZOIDAL_SCREW_CLASSES);
  const sizes = trapezoidalSizes(thread);
  const row = pitchRow(thread.pitch);
  const shift = (tolerance.endsWith('c') ? row.c : row.e) / 1000;
  const width =
    (gradeOf(pairRow(thread.major, thread.pitch).screw, tolerance) * multiStartFactor(thread.starts)) / 1000;
  return {
    major: limits(thread.major - row.screwMajor / 1000, thread.major),
    pitchDiameter: limits(sizes.pitchDiameter + shift - width, sizes.pitchDiameter + shift),
    minor: limits(sizes.screwMinor - 1.25 * width + shift, sizes.screwMinor),
  };
}

/**
 * Limits of size of a trapezoidal nut.
 *
 *     minor: D1 … D1 + TD1     pitch diameter: D2 … D2 + TD2·k     major: from D4
 *
 * The standard gives the major no upper limit; here it is where the flanks would meet, see `sharpRoot`.
 *
 * @param thread major and pitch [mm], starts
 * @param tolerance 7H, 8H or 9H
 * @returns limits of size                                     [mm]
 * @throws InputError the class is none of these, or the standard has no range for the size
 * @validity diameter above 5.6 to 90 mm, pitch 1 to 14 mm
 * @source iso-2903: TD1 and TD2
 * @source memory: the figures of TD1 and TD2
 * @example trapezoidalNutLimits({ major: 8, pitch: 2, starts: 1 }, '7H').minor // [6, 6.236]
 */
export function trapezoidalNutLimits(thread: TrapezoidalThread, tolerance: string): ThreadLimits {
  requireClass(tolerance, TRAPEZOIDAL_NUT_CLASSES);
  const sizes = trapezoidalSizes(thread);
  const row = pitchRow(thread.pitch);
  const width = (gradeOf(pairRow(thread.major, thread.pitch).nut, tolerance) * multiStartFactor(thread.starts)) / 1000;
  const most = sizes.pitchDiameter + width;
  return {
    major: limits(sizes.nutMajor, sharpRoot({ pitchDiameter: most, pitch: thread.pitch, flankAngle: 15 })),
    pitchDiameter: limits(sizes.pitchDiameter, most),
    minor: limits(sizes.nutMinor, sizes.nutMinor + row.nutMinor / 1000),
  };
}
