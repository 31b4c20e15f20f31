import { fault } from '../../units/faults.js';
import { requirePositive } from '../../units/require.js';
import { INCH } from '../rounding.js';
import { vSizes } from '../threads/metric-v.js';
import { limits, sharpRoot, type ThreadLimits } from './limits.js';

/** Size of a unified thread. */
export interface UnifiedThread {
  /** nominal major diameter [mm] */
  readonly major: number;
  /** distance of neighbouring crests [mm] */
  readonly pitch: number;
}

/** Factor on the tolerance of 2A: screws, nuts. */
const SCREWS: Readonly<Record<string, number>> = { '1A': 1.5, '2A': 1, '3A': 0.75 };
const NUTS: Readonly<Record<string, number>> = { '1B': 1.95, '2B': 1.3, '3B': 0.975 };

function factorOf(factors: Readonly<Record<string, number>>, tolerance: string): number {
  const factor = Object.hasOwn(factors, tolerance) ? factors[tolerance] : undefined;
  if (factor === undefined) throw fault('tolerance', tolerance, `must be one of ${Object.keys(factors).join(', ')}`);
  return factor;
}

/** Pitch diameter tolerance of class 2A [in]: 0.0015·∛D + 0.0015·√D + 0.015·∛p², engagement taken as one diameter. */
function basicTolerance(thread: UnifiedThread): number {
  requirePositive('major', thread.major);
  requirePositive('pitch', thread.pitch);
  const [diameter, pitch] = [thread.major / INCH, thread.pitch / INCH];
  return 0.0015 * Math.cbrt(diameter) + 0.0015 * Math.sqrt(diameter) + 0.015 * Math.cbrt(pitch * pitch);
}

/**
 * Limits of size of a unified screw. In inches, T the tolerance of 2A:
 *
 *     T = 0.0015·∛D + 0.0015·√D + 0.015·∛p²     allowance A = 0.3·T (class 3A: 0)
 *     major: D − A − 0.060·∛p² … D − A           (1A: 0.090·∛p²)
 *     pitch diameter: E − A − T·k … E − A         k = 1.5, 1, 0.75 for 1A, 2A, 3A
 *     minor: pitch diameter limits − 0.577350·p   (rounded root)
 *
 * @param thread major and pitch [mm]
 * @param tolerance 1A, 2A or 3A
 * @returns limits of size                                     [mm]
 * @throws InputError the class is none of these, or a size is not above 0
 * @validity engagement of about one diameter
 * @source asme-b1.1: tolerance formulas
 * @source memory: all of them; 1/4-20 2A agrees with published limits
 * @example unifiedScrewLimits({ major: 6.35, pitch: 1.27 }, '2A').major // [6.115, 6.322]
 */
export function unifiedScrewLimits(thread: UnifiedThread, tolerance: string): ThreadLimits {
  const factor = factorOf(SCREWS, tolerance);
  const basic = basicTolerance(thread) * INCH;
  const allowance = tolerance === '3A' ? 0 : 0.3 * basic;
  const crest = (tolerance === '1A' ? 0.09 : 0.06) * Math.cbrt((thread.pitch / INCH) ** 2) * INCH;
  const most = vSizes(thread).pitchDiameter - allowance;
  const root = thread.pitch / Math.sqrt(3);
  return {
    major: limits(thread.major - allowance - crest, thread.major - allowance),
    pitchDiameter: limits(most - basic * factor, most),
    minor: limits(most - basic * factor - root, most - root),
  };
}

/**
 * Limits of size of a unified nut. In inches:
 *
 *     pitch diameter: E … E + T·k                  k = 1.95, 1.3, 0.975 for 1B, 2B, 3B
 *     minor: D − 1.082532·p … + 0.25·p − 0.4·p²    from 1/4 in on; below, 0.05·∛p² + 0.03·p/D − 0.002 if that is more,
 *                                                  but not above 0.394·p; for 3B, 0.05·∛p² + 0.03·p/D − 0.002 for
 *                                                  all, from 0.23·p − 1.5·p² (0.12·p below 13 a turn) to 0.394·p
 *     major: from D
 *
 * The major is given no upper limit here but where the flanks would meet, see `sharpRoot`.
 *
 * @param thread major and pitch [mm]
 * @param tolerance 1B, 2B or 3B
 * @returns limits of size                                     [mm]
 * @throws InputError the class is none of these, or a size is not above 0
 * @source asme-b1.1: tolerance formulas
 * @source memory: all of them; 1/4-20 2B agrees with published limits
 * @example unifiedNutLimits({ major: 6.35, pitch: 1.27 }, '2B').minor // [4.975, 5.267]
 */
export function unifiedNutLimits(thread: UnifiedThread, tolerance: string): ThreadLimits {
  const factor = factorOf(NUTS, tolerance);
  const sizes = vSizes(thread);
  const most = sizes.pitchDiameter + basicTolerance(thread) * INCH * factor;
  return {
    major: limits(thread.major, sharpRoot({ pitchDiameter: most, pitch: thread.pitch, flankAngle: 30 })),
    pitchDiameter: limits(sizes.pitchDiameter, most),
    minor: limits(sizes.nutMinor, sizes.nutMinor + minorTolerance(thread, tolerance) * INCH),
  };
}

/** inches */
function minorTolerance(thread: UnifiedThread, tolerance: string): number {
  const [diameter, pitch] = [thread.major / INCH, thread.pitch / INCH];
  const bySize = 0.05 * Math.cbrt(pitch * pitch) + (0.03 * pitch) / diameter - 0.002;
  const between = (least: number) => Math.min(0.394 * pitch, Math.max(least, bySize));
  if (tolerance === '3B') return between(pitch < 1 / 12.5 ? 0.23 * pitch - 1.5 * pitch * pitch : 0.12 * pitch);
  const plain = 0.25 * pitch - 0.4 * pitch * pitch;
  return diameter >= 0.25 - 1e-9 ? plain : between(plain);
}
