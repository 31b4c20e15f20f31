import { type FastenerSize, fastenerRow, fastenerThread } from './sizes.js';

const HEAT_SET: Readonly<Partial<Record<FastenerSize, number>>> = {
  M2: 3.2,
  'M2.5': 3.6,
  M3: 4,
  M4: 5.6,
  M5: 6.4,
  M6: 8,
  M8: 9.6,
};

const THREAD_FORMING: Readonly<Record<FastenerSize, number>> = {
  M2: 1.8,
  'M2.5': 2.25,
  M3: 2.75,
  M4: 3.65,
  M5: 4.55,
  M6: 5.45,
  M8: 7.3,
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

/**
 * Hole for a screw that cuts its own thread in plastic: 0.8 of its diameter.
 *
 * @param size M2 to M8
 * @returns hole diameter [mm]
 * @throws InputError size is not in the table
 * @source memory: the rule 0.8 d
 * @example selfTapBore('M3') // 2.4 mm
 */
export function selfTapBore(size: FastenerSize): number {
  return Number((0.8 * fastenerThread(size).diameter).toFixed(3));
}

/**
 * Hole for a thread-forming screw in metal, middle of its range.
 *
 * @param size M2 to M8
 * @returns hole diameter [mm]
 * @throws InputError size is not in the table
 * @source common-practice: M2.5 to M8 in a published chart
 * @source memory: M2
 * @example threadFormingHole('M3') // 2.75 mm
 */
export function threadFormingHole(size: FastenerSize): number {
  return fastenerRow(THREAD_FORMING, size);
}
