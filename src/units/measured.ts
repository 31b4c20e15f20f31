/**
 * A value that is known within bounds. `least` and `most` are worst-case bounds; in statistics their
 * half-width counts as two standard deviations.
 */
export interface Measured {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
}

/** Half-width of a reading by calipers in a steady hand, where nothing else is said [mm]. @source common-practice */
export const CALIPERS = 0.03;

/** A value without uncertainty. */
export function exactly(value: number): Measured {
  return { least: value, likely: value, most: value };
}

/** `value ± half`. */
export function plusMinus(value: number, half: number): Measured {
  return { least: value - half, likely: value, most: value + half };
}

/** The larger of the two distances from the likely value to its bounds. */
export function halfWidth(value: Measured): number {
  return Math.max(value.most - value.likely, value.likely - value.least);
}

/** Worst-case sum. */
export function sum(...values: readonly Measured[]): Measured {
  let [least, likely, most] = [0, 0, 0];
  for (const value of values) {
    least += value.least;
    likely += value.likely;
    most += value.most;
  }
  return { least, likely, most };
}

/** Worst-case difference `a − b`. */
export function difference(a: Measured, b: Measured): Measured {
  return { least: a.least - b.most, likely: a.likely - b.likely, most: a.most - b.least };
}

/** `factor · value`; a negative factor swaps the bounds. */
export function scaled(value: Measured, factor: number): Measured {
  const ends = [value.least * factor, value.most * factor];
  return { least: Math.min(...ends), likely: value.likely * factor, most: Math.max(...ends) };
}

/** The same bounds moved by a plain number. */
export function shifted(value: Measured, by: number): Measured {
  return { least: value.least + by, likely: value.likely + by, most: value.most + by };
}

/** Bounds widened by `half` on either side. */
export function widened(value: Measured, half: number): Measured {
  return { least: value.least - half, likely: value.likely, most: value.most + half };
}

/** The larger of two values, bound by bound. */
export function larger(a: Measured, b: Measured): Measured {
  return { least: Math.max(a.least, b.least), likely: Math.max(a.likely, b.likely), most: Math.max(a.most, b.most) };
}

/** The smallest of several values, bound by bound. */
export function smallest(...values: readonly Measured[]): Measured {
  return {
    least: Math.min(...values.map((v) => v.least)),
    likely: Math.min(...values.map((v) => v.likely)),
    most: Math.min(...values.map((v) => v.most)),
  };
}
