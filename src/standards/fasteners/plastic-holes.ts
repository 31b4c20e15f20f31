import { type FastenerSize, fastenerRow } from './sizes.js';

const HEAT_SET: Readonly<Partial<Record<FastenerSize, number>>> = {
  M2: 3.2,
  'M2.5': 3.6,
  M3: 4,
  M4: 5.6,
  M5: 6.4,
  M6: 8,
  M8: 9.6,
};

/**
 * Bore for a heat-set insert, and the least boss around it: twice the bore. The insert's own data go first.
 *
 * @param size M2 to M8
 * @returns bore and boss diameter [mm]
 * @throws InputError size is not in the table
 * @source common-practice: M3 to M6 in two published charts, M2 and M2.5 in one; M8 varies from 9.6 to 10
 * @example heatSetBore('M3').bore // 4 mm
 */
export function heatSetBore(size: FastenerSize): { readonly bore: number; readonly boss: number } {
  const bore = fastenerRow(HEAT_SET, size);
  return { bore, boss: 2 * bore };
}
