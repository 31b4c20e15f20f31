/**
 * A number for people: at most `places` decimals, no trailing zeros, never `-0`.
 * Long decimals lose at most half a unit of the last place.
 * @example plain(2.5001, 3) // '2.5'
 */
export function plain(value: number, places = 3): string {
  if (!Number.isFinite(value)) return value > 0 ? 'unlimited' : String(value);
  const text = value.toFixed(places);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}

/**
 * A worked-out figure for people: lengths to a hundredth of a millimetre, others to one decimal from 10 on and two below; what
 * is small keeps two digits that count. Sizes that a person told, and those of a list, are `plain`.
 *
 * @param value the figure
 * @param unit  its unit
 * @param more  decimals beside those
 * @example worked(73.742, 'min') // '73.7'
 */
export function worked(value: number, unit = '', more = 0): string {
  const size = Math.abs(value);
  if (size >= 0.01 || size < 1e-9) return plain(value, decimalsOf(value, unit) + more);
  return String(Number(value.toPrecision(2 + more)));
}

/** Decimals that a worked-out figure of this size has at most. */
export function decimalsOf(value: number, unit: string): number {
  const size = Math.abs(value);
  if (size < 0.1 && size >= 1e-9) return 3;
  return unit !== 'mm' && size >= 10 ? 1 : 2;
}

/**
 * How many there are of a thing, in words.
 * @param count as a number, or as the figure that is told
 * @param one   the thing
 * @param many  several of it
 * @example howMany(1, 'start') // '1 start'
 */
export function howMany(count: number | string, one: string, many = `${one}s`): string {
  return `${count} ${String(count) === '1' ? one : many}`;
}

/**
 * Figures of a column: each has as many decimals as the one that needs most of them.
 * @param values the figures
 * @param places decimals at most
 * @example alike([0.04, 0.1]) // ['0.04', '0.10']
 */
export function alike(values: readonly number[], places = 3): string[] {
  const decimals = values.map((value) => plain(value, places).split('.')[1]?.length ?? 0);
  return values.map((value) => value.toFixed(Math.max(...decimals)));
}

/**
 * What is at least to be added, in hundredths, so that what a person then types is enough.
 * @example upwards(0.351) // '0.36'
 */
export function upwards(value: number): string {
  return plain(Math.ceil(100 * value - 1e-6) / 100, 2);
}

/**
 * Rounds for machine-readable output, so that the same part reads the same on every machine.
 * @example rounded(0.1 + 0.2, 6) // 0.3
 */
export function rounded(value: number, places = 6): number {
  const factor = 10 ** places;
  const result = Math.round(value * factor) / factor;
  if (!Number.isFinite(result)) return value;
  return Object.is(result, -0) ? 0 : result;
}

/**
 * Rounds to nine significant digits; what is below half a billionth is nothing. Keeps small steps exact where
 * {@link rounded} would cut them.
 * @example significant(0.00793750000001) // 0.0079375
 */
export function significant(value: number): number {
  return Math.abs(value) < 5e-10 ? 0 : Number(value.toPrecision(9));
}
