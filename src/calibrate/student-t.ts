import { requirePositive } from '../units/require.js';

/** The point of the normal distribution that 97.5 % lie below. */
const Z = 1.959964;

/**
 * Half-width, in standard errors, of the interval that holds the truth 19 times in 20 when the spread itself was
 * estimated with so many degrees of freedom. A series in 1/ν around the normal distribution.
 *
 *     t = z + (z³ + z)/4ν + (5z⁵ + 16z³ + 3z)/96ν² + (3z⁷ + 19z⁵ + 17z³ − 15z)/384ν³
 *
 * @param freedom  ν  degrees of freedom, 4 or more for three digits  [-]  > 0
 * @returns t, two-sided 95 %  [-]
 * @throws InputError ν is not above 0
 * @source handbook of mathematical functions, 26.7.5 (from memory, held against the table of t)
 * @example studentT95(10) // 2.228
 */
export function studentT95(freedom: number): number {
  requirePositive('freedom', freedom);
  const [z, v] = [Z, freedom];
  return (
    z +
    (z ** 3 + z) / (4 * v) +
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * v ** 2) +
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * v ** 3)
  );
}
