import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Share of its length on which a lobe with crowned sides touches straight flanks, layer by layer along the lobe.
 *
 *     t = (3·σ·w / (4·E·c))^(1/3), at most 1        σ = E·(4/3)·c·t³/w
 *
 * @param p.stress   σ  pressure as if it touched all along     [MPa]  0 or above
 * @param p.width    w  width of the lobe in its middle         [mm]   > 0
 * @param p.modulus  E  of the lobe                             [MPa]  > 0
 * @param p.crown    c  that each side stands back at its ends  [mm]   0 or above
 * @returns t [-]
 * @throws InputError  a value is outside its range
 * @validity layers that do not pull their neighbours along: a lobe touches somewhat farther
 * @source derived: compression of a block between two flanks
 * @example crownedShare({ stress: 0.48, width: 6, modulus: 40, crown: 0.5 }) // 0.4762
 */
export function crownedShare(p: {
  readonly stress: number;
  readonly width: number;
  readonly modulus: number;
  readonly crown: number;
}): number {
  requireNotNegative('stress', p.stress);
  requirePositive('width', p.width);
  requirePositive('modulus', p.modulus);
  requireNotNegative('crown', p.crown);
  const whole = (4 * p.modulus * p.crown) / (3 * p.width);
  return p.stress >= whole ? 1 : Math.cbrt(p.stress / whole);
}
