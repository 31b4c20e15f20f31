import { requirePositive, requireRange } from '../../units/require.js';
import { offsetAt, type PrintOffset } from './printed-size.js';

/**
 * Size that a modelled length comes out with: in the plane with the plane's shrink, along the axis with the axis' own.
 *
 *     out = m·(1 − s)
 *
 * @param p.modelled  m  size in the file                                     [mm]  > 0
 * @param p.shrink    s  shrink, as a fraction of the modelled size           [-]   −0.1 to 0.1
 * @returns size on the bench [mm]
 * @throws InputError  a value is outside its range
 * @source derived: shrink is stated on the modelled size
 * @example shrunk({ modelled: 100, shrink: 0.01 }) // 99
 */
export function shrunk(p: { readonly modelled: number; readonly shrink: number }): number {
  requirePositive('modelled', p.modelled);
  requireRange('shrink', p.shrink, -0.1, 0.1);
  return p.modelled * (1 - p.shrink);
}

/**
 * Diameter that a modelled hole comes out with. The offset may be a line over the diameter, as small holes lose more.
 *
 *     D = m·(1 − s) − (a + b·D)
 *
 * @param p.modelled  m  diameter in the file                                 [mm]  > 0
 * @param p.shrink    s  in-plane shrink, as a fraction of the modelled size  [-]   −0.1 to 0.1
 * @param p.offset    how much smaller than modelled a hole comes out, diametral [mm], or the line {at_zero: a, per_mm: b}
 * @returns diameter on the bench [mm]
 * @throws InputError  a value is outside its range
 * @source common-practice: hole offset as a line over the diameter
 * @example holeAsPrinted({ modelled: 10.2525, shrink: 0.01, offset: 0.15 }) // 10
 */
export function holeAsPrinted(p: {
  readonly modelled: number;
  readonly shrink: number;
  readonly offset: PrintOffset;
}): number {
  const size = shrunk(p);
  if (typeof p.offset === 'number') return size - offsetAt(p.offset, size);
  return (size - p.offset.at_zero) / (1 + p.offset.per_mm);
}
