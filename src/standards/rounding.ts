/** One inch in mm, exact by definition. */
export const INCH = 25.4;

/**
 * A length cleared of binary noise, so that 3/8 in is 9.525 mm and not 9.524999999999999.
 *
 * @param length a length                 [mm]
 * @returns the same to 1e-9              [mm]
 * @source derived: nine decimals are far below any tolerance and far above binary noise
 * @example tidy(0.1 + 0.2) // 0.3 mm
 */
export function tidy(length: number): number {
  return Number(length.toFixed(9));
}

/**
 * A length to the micrometre, as metric thread tables print it.
 *
 * @param length a length                 [mm]
 * @returns the nearest whole micrometre  [mm]
 * @source iso-724: dimensions are given to three decimals
 * @example toMicrometre(7.188101) // 7.188 mm
 */
export function toMicrometre(length: number): number {
  return Number((Math.round(tidy(length * 1000)) / 1000).toFixed(3));
}
