import { requireRange } from '../../units/require.js';

/** Linear expansion of unfilled filament plastics: 60 to 120·10⁻⁶ is the span of handbook tables [1/K]. */
export const PLASTIC_EXPANSION = { least: 60e-6, likely: 90e-6, most: 120e-6 } as const;

/** Linear expansion of steel [1/K]. */
export const STEEL_EXPANSION = 12e-6;

/** Parts are measured at this temperature [°C]. */
export const REFERENCE_TEMPERATURE = 20;

/**
 * Growth of a plastic part relative to the steel it runs on, away from the temperature at which both were measured.
 *
 *     ε = (α_p − α_s)·(T − 20)
 *
 * @param p.temperature  T    temperature of part and screw         [°C]   −40 to 250
 * @param p.expansion    α_p  linear expansion of the plastic       [1/K]  0 to 0.001, default 90·10⁻⁶
 * @returns ε, negative in the cold [-]
 * @throws InputError  a value is outside its range
 * @source memory: handbook tables of thermal expansion; steel 12·10⁻⁶
 * @example thermalGrowth({ temperature: 70 }) // 0.0039
 */
export function thermalGrowth(p: { readonly temperature: number; readonly expansion?: number | undefined }): number {
  const { expansion = PLASTIC_EXPANSION.likely } = p;
  requireRange('temperature', p.temperature, -40, 250);
  requireRange('expansion', expansion, 0, 0.001);
  return (expansion - STEEL_EXPANSION) * (p.temperature - REFERENCE_TEMPERATURE);
}
