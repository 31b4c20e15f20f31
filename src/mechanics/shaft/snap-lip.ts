import { requirePositive } from '../../units/require.js';

/**
 * Strain around a closed ring whose lip gives while something round is pushed past it.
 *
 *     ε = 2·a / D      a reach of the lip over what it holds, per side
 *
 * @param p.reach    a  per side            [mm]  > 0
 * @param p.outside  D  of what is held     [mm]  > 0
 * @returns ε [-]
 * @throws InputError  a value is not above 0
 * @source common-practice
 * @example lipStrain({ reach: 0.3, outside: 22 }) // 0.0273
 */
export function lipStrain(p: { readonly reach: number; readonly outside: number }): number {
  requirePositive('reach', p.reach);
  requirePositive('outside', p.outside);
  return (2 * p.reach) / p.outside;
}

/** So much of the strain at which a plastic yields it springs back from; never more than the second, at which prints are pushed together. */
const SPRINGS_BACK = 0.8;
const MOST_STRAIN = 0.03;

/**
 * Strain that a printed ring takes for the moment in which something snaps in: up to the first it springs back, up to the
 * second it keeps some of it.
 *
 *     ε_pass = min(0.8·σ/E, 3 %)      ε_fail = min(σ/E, 3 %)
 *
 * @param p.strength  σ  in tension, along the layers  [MPa]  > 0
 * @param p.modulus   E                                [MPa]  > 0
 * @returns both [-]
 * @throws InputError  a value is not above 0
 * @source common-practice: 1.5 % of PLA, 3 % of PETG, ABS and PA; the lower of that and of what is elastic
 * @example snapStrain({ strength: 44, modulus: 1850 }).pass // 0.019
 */
export function snapStrain(p: { readonly strength: number; readonly modulus: number }): {
  readonly pass: number;
  readonly fail: number;
} {
  requirePositive('strength', p.strength);
  requirePositive('modulus', p.modulus);
  const yields = p.strength / p.modulus;
  return { pass: Math.min(SPRINGS_BACK * yields, MOST_STRAIN), fail: Math.min(yields, MOST_STRAIN) };
}
