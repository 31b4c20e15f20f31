import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Bending stress in a ring that is turned inside out: pulled at its inner edge, held by screws further out, its section
 * free to rotate as a whole.
 *
 *     σ = 6·F·a / (2π·t²·r_i·ln(r_o/r_i))
 *
 * @param p.axialForce  F    along the axis                          [N]   0 or above
 * @param p.arm         a    from the inner edge to the screws       [mm]  0 or above
 * @param p.inner       r_i  inner radius, that of the body          [mm]  > 0
 * @param p.outer       r_o  outer radius                            [mm]  above the inner one
 * @param p.thickness   t                                            [mm]  > 0
 * @returns σ at the inner edge [MPa]
 * @throws InputError  a value is outside its range
 * @validity a flange whose body is soft against turning; a stiff body holds it better
 * @source memory: handbook, rings under a twisting moment around them
 * @example looseRingBending({ axialForce: 800, arm: 5, inner: 11, outer: 22, thickness: 6 }) // 13.9159
 */
export function looseRingBending(p: {
  readonly axialForce: number;
  readonly arm: number;
  readonly inner: number;
  readonly outer: number;
  readonly thickness: number;
}): number {
  requireNotNegative('axialForce', p.axialForce);
  requireNotNegative('arm', p.arm);
  requirePositive('inner', p.inner);
  requirePositive('thickness', p.thickness);
  if (!(p.outer > p.inner)) throw fault('outer', p.outer, 'must be above the inner radius');
  const twist = (p.axialForce * p.arm) / (2 * Math.PI);
  return (6 * twist) / (p.thickness ** 2 * p.inner * Math.log(p.outer / p.inner));
}
