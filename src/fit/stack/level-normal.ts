import { normalBelow, normalDensity } from './normal.js';

/** A standard deviation or a distance below this counts as none, mm. */
export const TINY = 1e-12;

/** Where so little is normal, the sum is as good as level. */
const LEVEL = 0.001;

/**
 * Share of the sum of a level and a normal variable, both around 0, that comes out below t.
 *
 *     F(t) = (s/2h)·[G((t+h)/s) − G((t−h)/s)]     G(z) = z·Φ(z) + φ(z)
 *
 * @param t                                                  [mm]
 * @param half  h  half-width of the level variable          [mm]
 * @param sigma s  standard deviation of the normal one      [mm]  0 or above
 * @returns F, 0 to 1
 * @source derived: sum of a level and a normal variable
 * @example levelNormalBelow(-0.5, 1, 0) // 0.25
 */
export function levelNormalBelow(t: number, half: number, sigma: number): number {
  const h = Math.abs(half);
  if (h === 0) return stepBelow(t, sigma);
  if (sigma <= LEVEL * h) return Math.min(1, Math.max(0, (t + h) / (2 * h)));
  const area = (z: number) => z * normalBelow(z) + normalDensity(z);
  return (sigma / (2 * h)) * (area((t + h) / sigma) - area((t - h) / sigma));
}

/**
 * Its density; where it has none to speak of, a step, 0.
 *
 *     f(t) = [Φ((t+h)/s) − Φ((t−h)/s)] / 2h
 *
 * @param t                                                  [mm]
 * @param half  h  half-width of the level variable          [mm]
 * @param sigma s  standard deviation of the normal one      [mm]  0 or above
 * @returns f [1/mm]
 * @source derived: derivative of the share below
 * @example levelNormalDensity(0.5, 1, 0) // 0.5
 */
export function levelNormalDensity(t: number, half: number, sigma: number): number {
  const h = Math.abs(half);
  if (h === 0) return sigma > TINY ? normalDensity(t / sigma) / sigma : 0;
  if (sigma <= LEVEL * h) return Math.abs(t) < h ? 1 / (2 * h) : 0;
  return (normalBelow((t + h) / sigma) - normalBelow((t - h) / sigma)) / (2 * h);
}

function stepBelow(t: number, sigma: number): number {
  if (sigma > TINY) return normalBelow(t / sigma);
  return t > TINY ? 1 : t < -TINY ? 0 : 0.5;
}
