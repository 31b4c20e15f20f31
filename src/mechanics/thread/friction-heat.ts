import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive, requireRange } from '../../units/require.js';

/** Heat that free air and radiation take off plastic [W/(m²·K)]. @source memory, 8 to 12 */
const LOSS = 10;

/** Heat that steel and plastic take up at a sudden warmth, √(k·ρ·c) [W·√s/(m²·K)]. @source derived */
const EFFUSIVITY = { steel: 12_900, plastic: 685 } as const;

/** Time for which the warmth of the skin alone is judged; longer runs are for the warmth of the whole nut [s]. */
export const SKIN_TIME = 20;

/** A cycle so much shorter than the nut's own time is averaged [-]. */
const AVERAGED_CYCLE = 0.4;

/** How a nut warms. */
export interface NutWarmth {
  /** after this time it has warmed to 63 % of what it will come to [s] */
  readonly time: number;
  /** warmth for each watt of friction, once it is steady [K/W] */
  readonly perWatt: number;
}

/**
 * How the barrel around a thread warms, its heat going to the air alone.
 *
 *     τ = m·cp / (h·A)     ΔT = W / (h·A)     m = ρ·π/4·(D² − d²)·L     A = π·D·L + π/2·(D² − d²)     h = 10 W/(m²·K)
 *
 * @param p.outside       D   of the barrel                        [mm]        > 0
 * @param p.bore          d   mean diameter of the thread          [mm]        > 0, below D
 * @param p.length        L   of the barrel                        [mm]        > 0
 * @param p.density       ρ   of the plastic                       [g/cm³]     > 0
 * @param p.heatCapacity  cp  of the plastic                       [J/(kg·K)]  > 0
 * @returns τ [s] and warmth for each watt [K/W]
 * @throws InputError  a value is outside its range
 * @validity solid walls, free air; what flows into screw, flange and carriage is not counted
 * @source derived: lumped heat, with the usual loss to free air
 * @example nutWarmth({ outside: 25, bore: 10, length: 25, density: 1.41, heatCapacity: 1480 }).time // 772
 */
export function nutWarmth(p: {
  readonly outside: number;
  readonly bore: number;
  readonly length: number;
  readonly density: number;
  readonly heatCapacity: number;
}): NutWarmth {
  for (const key of ['outside', 'bore', 'length', 'density', 'heatCapacity'] as const) requirePositive(key, p[key]);
  if (p.bore >= p.outside) throw fault('bore', p.bore, 'must be below the outside');
  const ring = (Math.PI / 4) * (p.outside ** 2 - p.bore ** 2);
  const mass = (ring * p.length * p.density) / 1e6;
  const loss = (LOSS * (Math.PI * p.outside * p.length + 2 * ring)) / 1e6;
  return { time: (mass * p.heatCapacity) / loss, perWatt: 1 / loss };
}

/**
 * Share of its steady warmth that a nut comes to under a cycle: the plain share of the time where the cycle is short
 * beside the nut's own time.
 *
 *     f = (1 − e^(−t_on/τ)) / (1 − e^(−t_c/τ)), or t_on/t_c where t_c ≤ 0.4·τ
 *
 * @param p.onTime  t_on  in motion, in one go                   [s]  0 or above, at most the cycle
 * @param p.cycle   t_c   from start to start                    [s]  > 0
 * @param p.time    τ     the nut's own time, see `nutWarmth`    [s]  > 0
 * @returns f [-]
 * @throws InputError  a value is outside its range
 * @source derived: lumped heat under a cycle
 * @example warmShare({ onTime: 1200, cycle: 6000, time: 771.7 }) // 0.789
 */
export function warmShare(p: { readonly onTime: number; readonly cycle: number; readonly time: number }): number {
  requirePositive('cycle', p.cycle);
  requirePositive('time', p.time);
  requireRange('onTime', p.onTime, 0, p.cycle);
  if (p.cycle <= AVERAGED_CYCLE * p.time) return p.onTime / p.cycle;
  return (1 - Math.exp(-p.onTime / p.time)) / (1 - Math.exp(-p.cycle / p.time));
}

/**
 * How far the skin of the flanks warms above the nut while it runs.
 *
 *     ΔT = 2·f·PV·√(t/π) / (e_s + e_p)      e 12 900 and 685 W·√s/(m²·K) for steel and plastic
 *
 * @param p.friction          f   sliding friction              [-]        0 or above
 * @param p.pressureVelocity  PV  while running                 [MPa·m/s]  0 or above
 * @param p.onTime            t   in motion, in one go          [s]        0 or above
 * @returns ΔT [K]
 * @throws InputError  a value is below 0
 * @validity some seconds: it grows without end, so no more than 20 s are judged by it
 * @source derived: two half-spaces that share the heat of friction
 * @example skinWarmth({ friction: 0.2, pressureVelocity: 1, onTime: 60 }) // 128.7
 */
export function skinWarmth(p: {
  readonly friction: number;
  readonly pressureVelocity: number;
  readonly onTime: number;
}): number {
  requireNotNegative('friction', p.friction);
  requireNotNegative('pressureVelocity', p.pressureVelocity);
  requireNotNegative('onTime', p.onTime);
  const flux = p.friction * p.pressureVelocity * 1e6;
  return (2 * flux * Math.sqrt(p.onTime / Math.PI)) / (EFFUSIVITY.steel + EFFUSIVITY.plastic);
}
