/**
 * The shortest plain decimal that a reader turns back into the same float32; never in scientific notation, which some
 * readers refuse.
 *
 * @param value a float32 value
 * @returns its text
 * @example decimal(Math.fround(0.1)) // '0.1'
 */
export function decimal(value: number): string {
  if (Number.isInteger(value)) return String(value + 0);
  for (let digits = 7; digits <= 9; digits++) {
    const text = value.toPrecision(digits);
    if (!text.includes('e') && Math.fround(Number(text)) === value) return text.replace(/0+$/, '');
  }
  return small(value);
}

/** Values below a millionth, which `toPrecision` writes with an exponent. */
function small(value: number): string {
  for (let places = 12; places <= 60; places += 4) {
    const text = value.toFixed(places);
    if (Math.fround(Number(text)) === value) return text.replace(/0+$/, '');
  }
  return value.toFixed(60);
}
