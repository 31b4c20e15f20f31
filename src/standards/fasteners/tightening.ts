import { fault } from '../../units/faults.js';
import { type FastenerSize, fastenerRow } from './sizes.js';

/** Property class of a steel screw. */
export type PropertyClass = '8.8' | '12.9';

/** Preload and the torque that gives it. */
export interface Tightening {
  /** axial force in the screw [N] */
  readonly preload: number;
  /** tightening torque [N·mm] */
  readonly torque: number;
}

/** Per class: [preload N, torque N·m] at friction 0.12, then at 0.14. */
type Row = Readonly<Record<PropertyClass, readonly [number, number, number, number]>>;

const TABLE: Readonly<Partial<Record<FastenerSize, Row>>> = {
  'M2.5': { '8.8': [1703, 0.744, 1656, 0.824], '12.9': [2927, 1.278, 2846, 1.416] },
  M3: { '8.8': [2545, 1.321, 2477, 1.466], '12.9': [4375, 2.27, 4257, 2.52] },
  M4: { '8.8': [4421, 3.04, 4300, 3.37], '12.9': [7599, 5.226, 7391, 5.793] },
  M5: { '8.8': [7202, 6.074, 7009, 6.748], '12.9': [12378, 10.439, 12047, 11.597] },
  M6: { '8.8': [10182, 10.272, 9907, 11.398], '12.9': [17500, 17.655, 17027, 19.59] },
  M8: { '8.8': [18627, 24.893, 18132, 27.668], '12.9': [32016, 42.784, 31164, 47.554] },
};

/**
 * Preload and tightening torque of a steel screw in metal at 90 % of yield, medium clearance hole.
 * In printed plastic the plastic governs, not the screw: there these figures are a ceiling.
 *
 * @param p.size M2.5 to M8
 * @param p.propertyClass 8.8 (the default) or 12.9
 * @param p.friction 0.12 (the default) or 0.14              [-]
 * @returns preload [N] and torque [N·mm]
 * @throws InputError size, class or friction is not in the table
 * @source vdi-2230: derived at 90 % of yield
 * @example tightening({ size: 'M3' }).preload // 2545 N
 */
export function tightening(p: {
  readonly size: FastenerSize;
  readonly propertyClass?: PropertyClass;
  readonly friction?: number;
}): Tightening {
  const row = fastenerRow(TABLE, p.size)[p.propertyClass ?? '8.8'];
  if (row === undefined) throw fault('propertyClass', p.propertyClass, 'must be one of 8.8, 12.9');
  const friction = p.friction ?? 0.12;
  if (friction !== 0.12 && friction !== 0.14) throw fault('friction', friction, 'must be 0.12 or 0.14');
  const [preload, torque] = friction === 0.12 ? [row[0], row[1]] : [row[2], row[3]];
  return { preload, torque: Math.round(torque * 1000) };
}

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

/** Torque factor K of `T = K·F·d` by state of the thread [-]; 0.2 confirmed, the others from memory. */
const TORQUE_FACTORS = { dry: 0.2, general: 0.2, 'light-oil': 0.18, lubricated: 0.15 } as const;

/**
 * Axial force that a tightening torque gives.
 *
 *     F = T / (K·d)
 *
 * @param p.torque    T  tightening torque                    [N·mm]  0 or above
 * @param p.diameter  d  nominal diameter                     [mm]    > 0
 * @param p.factor    K  torque factor, 0.2 by default        [-]     > 0
 * @returns F                                                 [N]
 * @throws InputError a value is outside its range
 * @source textbook-design: bolt tension from torque
 * @example preloadFromTorque({ torque: 1200, diameter: 3 }) // 2000 N
 */
export function preloadFromTorque(p: {
  readonly torque: number;
  readonly diameter: number;
  readonly factor?: number;
}): number {
  const factor = p.factor ?? TORQUE_FACTORS.general;
  if (!(p.torque >= 0 && Number.isFinite(p.torque))) throw fault('torque', p.torque, 'must be 0 or above');
  if (!(p.diameter > 0 && Number.isFinite(p.diameter))) throw fault('diameter', p.diameter, 'must be above 0');
  if (!(factor > 0 && Number.isFinite(factor))) throw fault('factor', factor, 'must be above 0');
  return p.torque / (factor * p.diameter);
}
