import { requireRange } from '../../units/require.js';
import { type HeatLoss, type Plastic, ROOM } from './plastic.js';

const EXPONENTS = { standing: 1.5, moment: 0.75 } as const;

/**
 * Distance to the glass transition, 1 at 23 °C and 0 where the plastic is soft.
 *
 *     u = (Tg − T)/(Tg − 23), at most 1
 *
 * @param p.glass        Tg  glass transition     [°C]  above 23
 * @param p.temperature  T   of the part          [°C]
 * @returns u [-]
 * @internal
 */
export function glassDistance(p: { readonly glass: number; readonly temperature: number }): number {
  return Math.min(1, Math.max(0, (p.glass - p.temperature) / (p.glass - ROOM)));
}

/**
 * Share of a standing strength that is left in the warmth.
 *
 *     glasses φ = u^1.5       others φ = e^(−(T − 23)/τ)       above the limit for standing loads 0
 *
 * @param plastic.standingLimit  °C above which nothing may stand on it  [°C]
 * @param temperature            T, of the part                          [°C]  −40 to 250; below 23 nothing is gained
 * @returns φ [-]
 * @throws InputError  the temperature is outside its range
 * @source pipe-derating: glasses follow the derating table of PVC pipe by their distance to the glass transition
 * @source derived: exponentials of the others, from the rating of nylon pipe at 82 °C
 * @example standingHeatShare({ heat: { glass: 58 }, standingLimit: 45 }, 40) // 0.3688
 */
export function standingHeatShare(plastic: Pick<Plastic, 'heat' | 'standingLimit'>, temperature: number): number {
  requireRange('temperature', temperature, -40, 250);
  return temperature > plastic.standingLimit ? 0 : heatShare(plastic.heat, temperature, 'standing');
}

/**
 * Share of a short strength that is left in the warmth, for loads of seconds.
 *
 *     glasses r = u^0.75      others r = e^(−(T − 23)/τ)
 *
 * @param plastic      how heat weakens it
 * @param temperature  T, of the part  [°C]  −40 to 250; below 23 nothing is gained
 * @returns r [-]
 * @throws InputError  the temperature is outside its range
 * @source derived: lower side of what data sheets show
 * @example momentHeatShare({ heat: { glass: 147 } }, 80) // 0.63
 */
export function momentHeatShare(plastic: Pick<Plastic, 'heat'>, temperature: number): number {
  requireRange('temperature', temperature, -40, 250);
  return heatShare(plastic.heat, temperature, 'moment');
}

function heatShare(heat: HeatLoss, temperature: number, kind: 'standing' | 'moment'): number {
  if ('glass' in heat) return glassDistance({ glass: heat.glass, temperature }) ** EXPONENTS[kind];
  return Math.exp(-Math.max(0, temperature - ROOM) / heat[kind]);
}
