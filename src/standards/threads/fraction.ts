import { tidy } from '../rounding.js';

/**
 * An inch size as the trade writes it: whole, mixed or plain fraction down to 1/64, else a decimal.
 *
 * @param inches a size                                          [in]  > 0
 * @returns such as `3/8`, `1 1/4`, `2`, `0.19`
 * @source common-practice: fractions in lowest terms
 * @example inchText(1.25) // '1 1/4'
 */
export function inchText(inches: number): string {
  const sixtyFourths = Math.round(inches * 64);
  if (Math.abs(sixtyFourths / 64 - inches) > 1e-9) return String(tidy(inches));
  let [top, bottom] = [sixtyFourths % 64, 64];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const whole = Math.floor(sixtyFourths / 64);
  if (top === 0) return String(whole);
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}
