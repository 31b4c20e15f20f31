import { requireRange } from '../../units/require.js';

/** Scale of a Shore hardness. */
export type ShoreScale = 'A' | 'D';

/** Shore A above 80 with the Shore D that reads the same rubber. @source memory: conversion chart */
const A_TO_D: readonly (readonly [number, number])[] = [
  [80, 30],
  [85, 33],
  [90, 39],
  [95, 46],
  [98, 52],
];

/**
 * Stiffness of an elastomer by its hardness.
 *
 *     log10 E = 0.0235·S − 0.6403      S = Shore A up to 80, Shore D + 50 above
 *
 * @param p.hardness  H  reading                              [-]  A: 20 to 98, D: 30 to 85
 * @param p.scale        A or D
 * @returns E, at small strain [MPa]
 * @throws InputError  the reading is outside the range
 * @validity a guide, good to a quarter; 4.1 MPa at 10 % is published for a hard moulded grade, 41 MPa
 * @source memory: published fit of modulus over Shore hardness
 * @example elastomerModulus({ hardness: 95, scale: 'A' }) // 41.3
 */
export function elastomerModulus(p: { readonly hardness: number; readonly scale: ShoreScale }): number {
  if (p.scale === 'D') requireRange('hardness', p.hardness, 30, 85);
  else requireRange('hardness', p.hardness, 20, 98);
  return 10 ** (0.0235 * shore(p.hardness, p.scale) - 0.6403);
}

function shore(hardness: number, scale: ShoreScale): number {
  if (scale === 'D') return hardness + 50;
  if (hardness <= 80) return hardness;
  const above = A_TO_D.findIndex(([a]) => a >= hardness);
  const [[a0, d0], [a1, d1]] = [A_TO_D[above - 1]!, A_TO_D[above]!];
  return 50 + d0 + ((d1 - d0) * (hardness - a0)) / (a1 - a0);
}
