/** A stream of numbers that is the same for the same seed. */
export type Draw = () => number;

/**
 * Uniform numbers from 0 to below 1: a counter in steps of the golden section, its bits stirred by two rounds of
 * multiplication and shifting.
 *
 * @param seed whole number; equal seeds give equal streams
 * @returns a function that gives the next number
 * @example seededUniform(1)() === seededUniform(1)() // true
 */
export function seededUniform(seed: number): Draw {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let bits = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    bits = Math.imul(bits ^ (bits >>> 15), 0x735a2d97);
    return ((bits ^ (bits >>> 15)) >>> 0) / 2 ** 32;
  };
}

/**
 * Normal numbers of mean 0 and standard deviation 1, two uniform ones at a time turned into two normal ones.
 *
 *     x = √(−2·ln u)·cos 2πv,  √(−2·ln u)·sin 2πv
 *
 * @param seed whole number; equal seeds give equal streams
 * @returns a function that gives the next number
 * @source polar form of two independent normal variables
 * @example seededNormal(1)() === seededNormal(1)() // true
 */
export function seededNormal(seed: number): Draw {
  const uniform = seededUniform(seed);
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}
