import { fault } from '../../units/faults.js';
import { requireNotNegative } from '../../units/require.js';

/** [up to °C, factor] */
const TEMPERATURES: readonly (readonly [number, number])[] = [
  [30, 1],
  [35, 1.2],
  [50, 1.5],
  [100, 2],
  [120, 2.8],
];

/** [up to starts an hour, factor] */
const STARTS: readonly (readonly [number, number])[] = [
  [125, 1],
  [250, 1.3],
  [500, 1.6],
  [1000, 1.8],
  [Infinity, 2],
];

/** How much harder than evenly the load may strike. @source memory: shock factors */
export const SHOCK_FACTORS = { none: 1, light: 1.5, medium: 1.8, heavy: 2.2 } as const;

/** A kind of shock. */
export type Shock = keyof typeof SHOCK_FACTORS;

/** How a drive works that nobody tells of, at its worst: more starts an hour have no greater factor. */
export const ROUGH_DRIVE = { starts: 1001, shock: 'heavy' } as const;

/** And at its mildest. */
export const SMOOTH_DRIVE = { starts: 0, shock: 'none' } as const;

/**
 * Temperature factor of an elastomer insert: how much stronger it must be because it is warm. The stricter of the standard's table
 * and of what is usual for printed polyurethane: half as much again above 35 °C, double above 50 °C.
 *
 * @param temperature  around the insert                    [°C]  −30 to 120
 * @returns S_t [-]
 * @throws InputError  the temperature is outside the table
 * @source din-740: 1 to 30 °C, 2 to 100 °C, 2.8 to 120 °C; 1.4 and 1.8 to 60 and 80 °C are less than the practice
 * @source memory: 1.2 from there on
 * @source common-practice: polyurethane works at its rating up to 35 °C, and sets above 50 °C
 * @example temperatureFactor(55) // 2
 */
export function temperatureFactor(temperature: number): number {
  const row = TEMPERATURES.find(([most]) => temperature <= most);
  if (row === undefined || !(temperature >= -30)) throw fault('temperature', temperature, 'must be -30 to 120');
  return row[1];
}

/**
 * Start factor: how much stronger a coupling must be because it starts so often.
 *
 * @param startsPerHour  starts and reversals              [1/h]  0 or above
 * @returns S_z [-]
 * @throws InputError  the number is below 0
 * @source din-740: confirmed
 * @example startFactor(300) // 1.6
 */
export function startFactor(startsPerHour: number): number {
  requireNotNegative('startsPerHour', startsPerHour);
  return STARTS.find(([most]) => startsPerHour <= most)![1];
}
