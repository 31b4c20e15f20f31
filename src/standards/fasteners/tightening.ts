import { type FastenerSize, fastenerRow } from './sizes.js';

/** Seating torques [N·m]: clamp screw, set screw. Alloy steel in metal. */
const SEATING: Readonly<Record<FastenerSize, readonly [number, number]>> = {
  M2: [0.6, 0.21],
  'M2.5': [1.21, 0.57],
  M3: [2.1, 0.92],
  M4: [4.6, 2.2],
  M5: [9.5, 4],
  M6: [16, 7.2],
  M8: [39, 17],
};

/**
 * Seating torque of an alloy steel clamp screw or set screw in metal; far too much for printed plastic.
 *
 * @param size M2 to M8
 * @param kind clamp or set
 * @returns seating torque [N·mm]
 * @throws InputError size is not in the table
 * @source tightening-chart: confirmed, metal in metal
 * @example seatingTorque('M3', 'set') // 920 N·mm
 */
export function seatingTorque(size: FastenerSize, kind: 'clamp' | 'set'): number {
  const [clamp, set] = fastenerRow(SEATING, size);
  return Math.round((kind === 'clamp' ? clamp : set) * 1000);
}
