import { requireNotNegative, requirePositive, requireRange } from '../units/require.js';
import { COLUMN_DEFAULTS } from './column.js';
import { requireEnds, type ScrewEnds } from './ends.js';

/**
 * Side force between nut and screw when a bent or misaligned screw is forced sideways at the nut.
 *
 *     F = k·E·I·δ           I = π·dr⁴/64, a = x·L from the fixed (or first) end, b = L − a
 *     fixed-free       k = 3 / a³
 *     supported        k = 3·L / (a²·b²)               48/L³ at mid span
 *     fixed-supported  k = 12·L³ / (a³·b²·(3·L + b))   768/(7·L³) at mid span
 *     fixed-fixed      k = 3·L³ / (a³·b³)              192/L³ at mid span
 *
 * @param p.rootDiameter  dr  root diameter of the screw               [mm]   > 0
 * @param p.span          L   free length of the screw                 [mm]   > 0
 * @param p.ends              how the ends are held
 * @param p.offset        δ   how far the screw is forced sideways     [mm]   0 or above
 * @param p.at            x   where the nut is, as a share of the span [-]    0.05 to 0.95 (1 with a free end);
 *                            default mid span, the free end for fixed-free
 * @param p.modulus       E   modulus of elasticity                    [MPa]  > 0, default 207000
 * @returns F [N]
 * @throws InputError  a value is outside its range, or `ends` is unknown
 * @validity small deflection; near an end the figure grows without bound, as bearings then give way first
 * @source memory: handbook beam tables, deflection under a point load
 * @example sideLoad({ rootDiameter: 5.5, span: 300, ends: 'fixed-free', offset: 0.3 }) // 0.3099
 */
export function sideLoad(p: {
  readonly rootDiameter: number;
  readonly span: number;
  readonly ends: ScrewEnds;
  readonly offset: number;
  readonly at?: number | undefined;
  readonly modulus?: number | undefined;
}): number {
  const { modulus = COLUMN_DEFAULTS.modulus, at = p.ends === 'fixed-free' ? 1 : 0.5 } = p;
  requirePositive('rootDiameter', p.rootDiameter);
  requirePositive('span', p.span);
  requireEnds('ends', p.ends);
  requireNotNegative('offset', p.offset);
  requireRange('at', at, 0.05, p.ends === 'fixed-free' ? 1 : 0.95);
  requirePositive('modulus', modulus);
  const inertia = (Math.PI * p.rootDiameter ** 4) / 64;
  return modulus * inertia * p.offset * pointStiffness(p.ends, p.span, at * p.span);
}

function pointStiffness(ends: ScrewEnds, span: number, a: number): number {
  const b = span - a;
  switch (ends) {
    case 'fixed-free':
      return 3 / a ** 3;
    case 'supported':
      return (3 * span) / (a ** 2 * b ** 2);
    case 'fixed-supported':
      return (12 * span ** 3) / (a ** 3 * b ** 2 * (3 * span + b));
    case 'fixed-fixed':
      return (3 * span ** 3) / (a ** 3 * b ** 3);
  }
}
