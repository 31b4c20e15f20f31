/**
 * Share of a normal distribution below a point, by a rational approximation good to 1.5e-7.
 *
 *     Φ(z) = 1 − φ(z)·(b₁t + … + b₅t⁵)    t = 1/(1 + 0.2316419·z),  z ≥ 0
 *
 * @param z distance from the mean in standard deviations; may be ±Infinity
 * @returns 0 to 1
 * @source handbook of mathematical functions, 26.2.17 (coefficients from memory, held against the table of Φ)
 * @example normalBelow(1.96) // 0.975
 */
export function normalBelow(z: number): number {
  if (z < 0) return 1 - normalBelow(-z);
  const t = 1 / (1 + 0.2316419 * z);
  const series = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return 1 - normalDensity(z) * series;
}

/**
 * Density of a normal distribution of mean 0 and standard deviation 1.
 *
 *     φ(z) = exp(−z²/2) / √(2π)
 *
 * @param z distance from the mean in standard deviations
 * @returns density
 * @source definition
 * @example normalDensity(0) // 0.3989
 */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}
