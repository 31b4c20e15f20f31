import { requireNotNegative, requirePositive } from '../../units/require.js';

/** Modulus of elasticity of steel [MPa]. */
const STEEL = 207_000;

/**
 * Side load on a screw that is forced into a hole that misses it: the screw bends as a beam held at both ends until
 * the plastic beside it yields.
 *
 *     F = min(12·E·I·δ / L³, σ·d·L/2)        I = π·d⁴/64
 *
 * @param p.diameter     d  nominal diameter of the screw           [mm]   > 0
 * @param p.length       L  length of the hole in the plastic       [mm]   > 0
 * @param p.miss         δ  distance by which the hole misses       [mm]   0 or above
 * @param p.compressive  σ  compressive yield of the plastic        [MPa]  > 0
 * @returns F [N]
 * @throws InputError  a value is outside its range
 * @validity an upper bound: the thread's core is thinner, and the plastic gives before it yields
 * @source memory: handbook beam tables, guided at both ends; bearing of a pin over half the length
 * @example forcedScrewLoad({ diameter: 3, length: 5, miss: 0.1, compressive: 40 }) // 300
 */
export function forcedScrewLoad(p: {
  readonly diameter: number;
  readonly length: number;
  readonly miss: number;
  readonly compressive: number;
}): number {
  requirePositive('diameter', p.diameter);
  requirePositive('length', p.length);
  requireNotNegative('miss', p.miss);
  requirePositive('compressive', p.compressive);
  const inertia = (Math.PI * p.diameter ** 4) / 64;
  const bending = (12 * STEEL * inertia * p.miss) / p.length ** 3;
  return Math.min(bending, (p.compressive * p.diameter * p.length) / 2);
}
