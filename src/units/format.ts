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
