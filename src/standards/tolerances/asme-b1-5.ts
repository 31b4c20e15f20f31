import { fault } from '../../units/faults.js';
import { requirePositive } from '../../units/require.js';
import { INCH } from '../rounding.js';
import { acmeClearance, acmeSizes } from '../threads/acme.js';
import { limits, type ThreadLimits } from './limits.js';

/** Size of an Acme thread. */
export interface AcmeThread {
  /** nominal major diameter [mm] */
  readonly major: number;
  /** distance of neighbouring crests [mm] */
  readonly pitch: number;
}

/** General purpose classes. */
const ACME_CLASSES = ['2G', '3G', '4G'] as const;

/** Coefficients in inches: allowance on √D, tolerance on √D, tolerance on √p. */
const COEFFICIENTS: Readonly<Record<string, readonly [number, number, number]>> = {
  '2G': [0.008, 0.006, 0.03],
  '3G': [0.006, 0.0028, 0.014],
  '4G': [0.004, 0.002, 0.01],
};

interface AcmeTolerances {
  readonly allowance: number;
  readonly pitchDiameter: number;
  readonly crest: number;
}

function tolerancesOf(thread: AcmeThread, tolerance: string): AcmeTolerances {
  const row = Object.hasOwn(COEFFICIENTS, tolerance) ? COEFFICIENTS[tolerance] : undefined;
  if (row === undefined) throw fault('tolerance', tolerance, `must be one of ${ACME_CLASSES.join(', ')}`);
  requirePositive('major', thread.major);
  requirePositive('pitch', thread.pitch);
  const [diameter, pitch] = [thread.major / INCH, thread.pitch / INCH];
  return {
    allowance: row[0] * Math.sqrt(diameter) * INCH,
    pitchDiameter: (row[1] * Math.sqrt(diameter) + row[2] * Math.sqrt(pitch)) * INCH,
    crest: Math.max(0.05 * pitch, 0.005) * INCH,
  };
}

/**
 * Limits of size of a general purpose Acme screw. In inches, p the pitch, D the major:
 *
 *     major: D − max(0.05·p, 0.005) … D
 *     pitch diameter: E − A − T … E − A     2G: A = 0.008·√D, T = 0.006·√D + 0.030·√p
 *     minor: D − p − c − 1.5·T … D − p − c   c clearance, `acmeClearance`
 *
 * Limits are not rounded to the four decimals of an inch in which the standard's tables are printed. Starts do not
 * change them here; multi-start screws are often made with wider tolerances.
 *
 * @param thread major and pitch [mm]
 * @param tolerance 2G, 3G or 4G
 * @returns limits of size                                     [mm]
 * @throws InputError the class is none of these, or a size is not above 0
 * @source asme-b1.5: formulas of 2G confirmed to 0.0001 in on five threads
 * @source memory: allowances of 3G and 4G
 * @example acmeScrewLimits({ major: 12.7, pitch: 2.54 }, '2G').pitchDiameter // [10.938, 11.286]
 */
export function acmeScrewLimits(thread: AcmeThread, tolerance: string): ThreadLimits {
  const t = tolerancesOf(thread, tolerance);
  const sizes = acmeSizes(thread);
  const most = sizes.pitchDiameter - t.allowance;
  return {
    major: limits(thread.major - t.crest, thread.major),
    pitchDiameter: limits(most - t.pitchDiameter, most),
    minor: limits(sizes.screwMinor - 1.5 * t.pitchDiameter, sizes.screwMinor),
  };
}

/**
 * Limits of size of a general purpose Acme nut. In inches:
 *
 *     minor: D − p … D − p + max(0.05·p, 0.005)     pitch diameter: E … E + T     major: D + c … D + 2·c
 *
 * c is 0.02 in up to 10 threads an inch, 0.01 in for finer ones.
 *
 * @param thread major and pitch [mm]
 * @param tolerance 2G, 3G or 4G
 * @returns limits of size                                     [mm]
 * @throws InputError the class is none of these, or a size is not above 0
 * @source asme-b1.5: minor and pitch diameter of 2G confirmed
 * @source memory: nut major
 * @example acmeNutLimits({ major: 12.7, pitch: 2.54 }, '2G').minor // [10.160, 10.287]
 */
export function acmeNutLimits(thread: AcmeThread, tolerance: string): ThreadLimits {
  const t = tolerancesOf(thread, tolerance);
  const sizes = acmeSizes(thread);
  const most = sizes.pitchDiameter + t.pitchDiameter;
  return {
    major: limits(sizes.nutMajor, sizes.nutMajor + acmeClearance(thread.pitch)),
    pitchDiameter: limits(sizes.pitchDiameter, most),
    minor: limits(sizes.nutMinor, sizes.nutMinor + t.crest),
  };
}
