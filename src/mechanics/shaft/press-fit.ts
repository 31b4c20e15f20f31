import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive, requireRange } from '../../units/require.js';

/**
 * Interference that is left of a press fit of steel in plastic once both are warm. A strain that was held for long springs
 * back by no more than the share that relaxation left of its stress.
 *
 *     i(T) = c·i − ε·D      ε  growth of the plastic relative to steel; c·i for i above 0
 *
 * @param p.interference  i  where both were measured   [mm]
 * @param p.diameter      D  of the steel               [mm]  > 0
 * @param p.growth        ε                             [-]
 * @param p.kept          c  of a held strain           [-]   0 to 1, default 1
 * @returns i(T); below 0 it lies loose [mm]
 * @throws InputError  the diameter is not above 0, c is outside its range
 * @source derived: difference of expansions, superposed on a held strain that relaxed
 * @example interferenceWarm({ interference: 0.055, diameter: 22, growth: 0.00156 }) // 0.0207
 */
export function interferenceWarm(p: {
  readonly interference: number;
  readonly diameter: number;
  readonly growth: number;
  readonly kept?: number | undefined;
}): number {
  const { kept = 1 } = p;
  requirePositive('diameter', p.diameter);
  requireRange('kept', kept, 0, 1);
  return Math.min(p.interference, kept * p.interference) - p.growth * p.diameter;
}

/** What a fresh press fit of steel in a plastic ring does. */
export interface PressFit {
  /** between both [MPa] */
  readonly pressure: number;
  /** tension around the bore of the plastic [MPa] */
  readonly hoop: number;
  /** along the axis, that pushes it in or out [N] */
  readonly push: number;
}

/** Of plastics across a pull, and of plastic on steel while it slides in dry. @source common-practice */
const POISSON = 0.38;
const PUSHED_DRY = 0.25;

/**
 * A steel ring that is pressed into a plastic one, which alone gives (Lamé's thick cylinder).
 *
 *     p = i·E / (D·(k + ν))      k = (O² + D²)/(O² − D²)      σ = k·p      F = μ·p·π·D·B
 *
 * @param p.interference  i  on the diameter            [mm]   0 or above
 * @param p.diameter      D  of the steel               [mm]   > 0
 * @param p.outside       O  of the plastic             [mm]   > D
 * @param p.width         B  along the axis             [mm]   > 0
 * @param p.modulus       E  of the plastic             [MPa]  > 0
 * @returns pressure, tension and push of the first minutes
 * @throws InputError  a value is outside its range
 * @source memory: handbook, thick cylinders; ν 0.38 and μ 0.25 from common practice
 * @example pressFit({ interference: 0.08, diameter: 22, outside: 34, width: 7, modulus: 2000 }).push // 312
 */
export function pressFit(p: {
  readonly interference: number;
  readonly diameter: number;
  readonly outside: number;
  readonly width: number;
  readonly modulus: number;
}): PressFit {
  requireNotNegative('interference', p.interference);
  requirePositive('diameter', p.diameter);
  requirePositive('width', p.width);
  requirePositive('modulus', p.modulus);
  if (!(p.outside > p.diameter)) throw fault('outside', p.outside, 'must be above the diameter');
  const [outer, inner] = [p.outside ** 2, p.diameter ** 2];
  const stiff = (outer + inner) / (outer - inner);
  const pressure = (p.interference * p.modulus) / (p.diameter * (stiff + POISSON));
  return { pressure, hoop: stiff * pressure, push: PUSHED_DRY * pressure * Math.PI * p.diameter * p.width };
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
