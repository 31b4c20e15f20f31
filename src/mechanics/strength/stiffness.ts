import { requireRange } from '../../units/require.js';
import { type Plastic, ROOM } from './plastic.js';
import { strainKept } from './relaxation.js';

/**
 * Share of the modulus at 23 °C that is left in the warmth: read off a table, straight between its rows and beyond them.
 *
 *     E(T)/E(23)
 *
 * @param plastic      table of its stiffness
 * @param temperature  T, of the part  [°C]  −40 to 250; below 23 nothing is gained
 * @returns share [-]
 * @throws InputError  the temperature is outside its range
 * @source memory: stiffness over temperature on data sheets
 * @example stiffnessShare({ stiffness: [[40, 0.65], [60, 0.38], [80, 0.27], [100, 0.2]] }, 50) // 0.515
 */
export function stiffnessShare({ stiffness }: Pick<Plastic, 'stiffness'>, temperature: number): number {
  requireRange('temperature', temperature, -40, 250);
  if (temperature <= ROOM) return 1;
  const rows = [[ROOM, 1] as const, ...stiffness];
  const above = Math.max(
    1,
    rows.findIndex(([row]) => row >= temperature),
  );
  const last = temperature > rows.at(-1)![0] ? rows.length - 1 : above;
  const [[t0, e0], [t1, e1]] = [rows[last - 1]!, rows[last]!];
  return Math.max(0, e0 + ((e1 - e0) * (temperature - t0)) / (t1 - t0));
}

/**
 * Modulus that counts for a strain after some time: how far a plate sags, how far a flange gives.
 *
 *     E_c = E·(E(T)/E(23))·c(t, T)
 *
 * @param plastic        modulus, stiffness and creep
 * @param p.hours        t  the load has stood         [h]   0 or above
 * @param p.temperature  T  of the part                [°C]  −40 to 250
 * @returns E_c [MPa]
 * @throws InputError  a value is outside its range
 * @source derived: modulus times the share that is left
 * @example creepModulus({ modulus: 2100, stiffness: [[40, 0.93]], creep: { hour: 0.85, exponent: 0.063, strain: 0.007 }, heat: { glass: 103 } }, { hours: 1000, temperature: 23 }) // 1155.1
 */
export function creepModulus(
  plastic: Pick<Plastic, 'modulus' | 'stiffness' | 'creep' | 'heat'>,
  p: { readonly hours: number; readonly temperature: number },
): number {
  return plastic.modulus * stiffnessShare(plastic, p.temperature) * strainKept(plastic, p);
}
