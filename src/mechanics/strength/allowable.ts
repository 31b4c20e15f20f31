import { momentHeatShare, standingHeatShare } from './heat-shares.js';
import { type Direction, HOURS, type LoadDuration, type Plastic } from './plastic.js';
import { creepModulus } from './stiffness.js';

/** Plastic that is pressed all around bears more than it does in tension. @source derived */
const CONFINED = 1.2;

/** Shares of the short strength for loads of seconds, and for loads that repeat. @source derived */
const MOMENT_SHARE = 0.5;
const REPEATED_SHARE = { plane: 0.2, across: 0.12 } as const;

/** Tension that stands across the layers tears their seams slowly. @source derived */
const SEAM_SHARE = 0.75;

/** A stress as a check asks for it. */
export interface AskedStress {
  /** pressure: confined, under heads, washers and nuts, on flanks and flats */
  readonly kind: 'tension' | 'shear' | 'pressure';
  readonly duration: LoadDuration;
  /** of the part [°C] */
  readonly temperature: number;
  /** of a tension; default along the layers */
  readonly direction?: Direction | undefined;
}

/**
 * Stress that a printed plastic bears: the one law of strength for all parts.
 *
 *     standing  σ = σ₂₃·k(t)·φ(T)       seconds  σ = σ₂₃·0.50·r(T)       repeated  σ = σ₂₃·0.20·r(T), across 0.12
 *
 * Tension that stands across the layers takes 0.75 of that besides; a glass in standing tension bears no more than its
 * strain limit, ε·E(T)·c(t, T), above which it crazes. Pressure takes 1.2 times the strength along the layers, of a soft plastic what it bears
 * before it sinks. What stands longer bears no more, and layers part no later than lines tear, whatever the figures say.
 *
 * @param plastic            its figures
 * @param asked.temperature  T  of the part  [°C]  −40 to 250
 * @returns σ, 0 where it bears nothing [MPa]
 * @throws InputError  the temperature is outside its range
 * @source derived: creep rupture as yield at a slow rate, with a scatter of 2 on the mean curve; fatigue without data of prints
 * @validity solid walls, dry filament; if people can be hurt take half, and metal
 * @example allowableStress({ tensile: 42, tensileAcross: 21, shear: 20, modulus: 1300, heat: { standing: 70, moment: 85 }, standingLimit: 80, shares: { hour: 0.42, thousandHours: 0.3, years: 0.25 }, creep: { hour: 0.75, exponent: 0.0677, strain: 0.015 }, stiffness: [[40, 0.65]] }, { kind: 'tension', duration: 'years', temperature: 60 }) // 6.19
 */
export function allowableStress(plastic: Plastic, asked: AskedStress): number {
  const { kind, duration, temperature } = asked;
  const direction = kind === 'tension' ? (asked.direction ?? 'plane') : 'plane';
  const strength = strengthOf(plastic, kind, direction);
  if (duration === 'level')
    return Math.min(
      allowableStress(plastic, { ...asked, duration: 'thousand-hours' }),
      allowableStress(plastic, { ...asked, duration: 'repeated' }),
    );
  if (duration === 'moment') return strength * MOMENT_SHARE * momentHeatShare(plastic, temperature);
  if (duration === 'repeated') return strength * REPEATED_SHARE[direction] * momentHeatShare(plastic, temperature);
  const standing = strength * shareOf(plastic, duration) * standingHeatShare(plastic, temperature);
  if (kind !== 'tension') return standing;
  const seamed = direction === 'across' ? SEAM_SHARE * standing : standing;
  return 'glass' in plastic.heat ? Math.min(seamed, crazing(plastic, duration, temperature)) : seamed;
}

/**
 * Pressure that plastic bears under a head, washer or nut while it is tightened.
 *
 *     p = 0.5·1.2·σ₂₃, of a soft plastic half of what it bears before it sinks, where that is less
 *
 * @param plastic  its strength
 * @returns p, cold and for minutes [MPa]
 * @source derived: half of the confined strength
 * @example pressureWhileTightening({ tensile: 40 }) // 24
 */
export function pressureWhileTightening(plastic: Pick<Plastic, 'tensile' | 'bearing'>): number {
  return MOMENT_SHARE * confined(plastic);
}

/**
 * How long the load of an axis stands: a weight for years; what a level axis is pushed with for 1,000 hours, and back and
 * forth more than 10,000 times, whichever leaves less.
 *
 * @param axis  vertical, horizontal, or not told: then as vertical
 * @source common-practice
 * @example standingDuration('horizontal') // 'level'
 */
export function standingDuration(axis: 'vertical' | 'horizontal' | undefined): 'years' | 'level' {
  return axis === 'horizontal' ? 'level' : 'years';
}

function strengthOf(plastic: Plastic, kind: AskedStress['kind'], direction: Direction): number {
  if (kind === 'shear') return plastic.shear;
  if (kind === 'pressure') return confined(plastic);
  return direction === 'across' ? Math.min(plastic.tensileAcross, plastic.tensile) : plastic.tensile;
}

function confined({ tensile, bearing = Infinity }: Pick<Plastic, 'tensile' | 'bearing'>): number {
  return Math.min(CONFINED * tensile, bearing);
}

/** Share that stands: figures of a plastic that quarrel let none bear more for longer. */
function shareOf({ shares: { hour, thousandHours, years } }: Plastic, duration: keyof typeof HOURS): number {
  if (duration === 'hour') return hour;
  if (duration === 'years') return Math.min(hour, thousandHours, years);
  return Math.min(hour, thousandHours);
}

/** Stress at which a glass reaches the strain that crazes it in the end. */
function crazing(plastic: Plastic, duration: keyof typeof HOURS, temperature: number): number {
  return plastic.creep.strain * creepModulus(plastic, { hours: HOURS[duration], temperature });
}
