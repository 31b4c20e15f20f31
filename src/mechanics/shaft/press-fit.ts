import { requirePositive } from '../../units/require.js';

/**
 * Interference that is left of a press fit of steel in plastic once both are warm.
 *
 *     i(T) = i − ε·D      ε  growth of the plastic relative to steel
 *
 * @param p.interference  i  where both were measured   [mm]
 * @param p.diameter      D  of the steel               [mm]  > 0
 * @param p.growth        ε                             [-]
 * @returns i(T); below 0 it lies loose [mm]
 * @throws InputError  the diameter is not above 0
 * @source derived: difference of expansions
 * @example interferenceWarm({ interference: 0.055, diameter: 22, growth: 0.00156 }) // 0.0207
 */
export function interferenceWarm(p: {
  readonly interference: number;
  readonly diameter: number;
  readonly growth: number;
}): number {
  requirePositive('diameter', p.diameter);
  return p.interference - p.growth * p.diameter;
}

/** Seams between layers take so much of the strain that the plastic takes for good; never more than the second. @source common-practice */
const SEAMS = 0.5;
const MOST_STRAIN = 0.006;

/**
 * Interference over diameter that a printed pocket takes for good.
 *
 *     ε = min(0.5·ε_long, 0.6 %)
 *
 * @param strain  ε_long  that the plastic takes for good  [-]  > 0
 * @returns ε [-]
 * @throws InputError  the strain is not above 0
 * @source common-practice: 0.4 % of PLA, PC and ABS, 0.6 % of PETG and PA; the lower of that and half of the long strain
 * @example pressStrain(0.008) // 0.004
 */
export function pressStrain(strain: number): number {
  requirePositive('strain', strain);
  return Math.min(SEAMS * strain, MOST_STRAIN);
}
