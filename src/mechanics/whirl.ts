import { requirePositive } from '../units/require.js';
import { requireEnds, type ScrewEnds } from './ends.js';

/** Whirl constant of a round steel bar with plain bearings at both ends [rpm·mm]. */
const WHIRL_CONSTANT = 1.209e8;

/** How the ends change the first whirl speed [-]. */
const END_FACTORS: Readonly<Record<ScrewEnds, number>> = {
  'fixed-free': 0.36,
  supported: 1,
  'fixed-supported': 1.47,
  'fixed-fixed': 2.23,
};

/** Share of the whirl speed that practice stays under [-]. */
export const DERATING = 0.8;

/**
 * First whirl speed of a steel screw, underated: practice stays under 80 % of it.
 *
 *     n = 1.209e8 · C · dr / L²      C = 0.36 fixed-free, 1 supported, 1.47 fixed-supported, 2.23 fixed-fixed
 *
 * @param p.rootDiameter  dr  root diameter of the screw     [mm]  > 0
 * @param p.span          L   free length of the screw       [mm]  > 0
 * @param p.ends              how the ends are held
 * @returns n [rpm]
 * @throws InputError  a value is outside its range, or `ends` is none of the four
 * @validity steel (modulus 207 GPa); span at least ten diameters; the screw straight, its nut no help
 * @source screw-guide: critical speed
 * @example whirlSpeed({ rootDiameter: 6.2, span: 500, ends: 'supported' }) // 2998.3
 */
export function whirlSpeed(p: {
  readonly rootDiameter: number;
  readonly span: number;
  readonly ends: ScrewEnds;
}): number {
  requirePositive('rootDiameter', p.rootDiameter);
  requirePositive('span', p.span);
  requireEnds('ends', p.ends);
  return (WHIRL_CONSTANT * END_FACTORS[p.ends] * p.rootDiameter) / p.span ** 2;
}
