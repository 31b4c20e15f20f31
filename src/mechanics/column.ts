import { fault } from '../units/faults.js';
import { requirePositive } from '../units/require.js';
import { requireEnds, type ScrewEnds } from './ends.js';

/** Which set of end factors: what theory gives, or what is recommended because no end is truly fixed. */
export type ColumnFactors = 'recommended' | 'theory';

const END_FACTORS: Readonly<Record<ColumnFactors, Readonly<Record<ScrewEnds, number>>>> = {
  recommended: { 'fixed-free': 0.25, supported: 1, 'fixed-supported': 1.2, 'fixed-fixed': 1.2 },
  theory: { 'fixed-free': 0.25, supported: 1, 'fixed-supported': 2, 'fixed-fixed': 4 },
};

/** Share of the buckling force that practice stays under; other guides take 0.8, with end factors of 1.2 where theory has 2 and 4 [-]. @source screw-guide */
export const COLUMN_SHARE = 0.5;

/** Steel: modulus and yield that hold unless told otherwise [MPa]. */
export const COLUMN_DEFAULTS = { modulus: 207000, yield: 300, factors: 'recommended' } as const;

/** What `columnLoad` works from. */
export interface Column {
  /** dr, root diameter of the screw [mm], > 0 */
  readonly rootDiameter: number;
  /** L, length between the ends, or from the fixed end to the load [mm], > 0 */
  readonly span: number;
  readonly ends: ScrewEnds;
  /** E, modulus of elasticity [MPa], > 0; default 207000 */
  readonly modulus?: number | undefined;
  /** Sy, yield strength [MPa], > 0; default 300 */
  readonly yield?: number | undefined;
  /** end factors; default recommended */
  readonly factors?: ColumnFactors | undefined;
}

/**
 * Axial force at which a pushed screw buckles, underated: practice stays under half of it.
 *
 *     Euler    P = C·π²·E·I / L²                                I = π·dr⁴/64
 *     Johnson  P = A·(Sy − (Sy·L / (2π·k))² / (C·E))            A = π·dr²/4, k = dr/4
 *     Johnson where L/k < √(2π²·C·E / Sy), Euler beyond; both give Sy·A/2 where they meet
 *     C = 0.25 fixed-free, 1 supported, 1.2 fixed-supported, 1.2 fixed-fixed; theory 0.25, 1, 2, 4
 *
 * @param p.rootDiameter  dr  root diameter of the screw   [mm]   > 0
 * @param p.span          L   length between the ends      [mm]   > 0
 * @param p.ends              how the ends are held
 * @param p.modulus       E   modulus of elasticity        [MPa]  > 0, default 207000
 * @param p.yield         Sy  yield strength               [MPa]  > 0, default 300
 * @param p.factors           'recommended' (default) or 'theory'
 * @returns P [N]
 * @throws InputError  a value is outside its range, or `ends` or `factors` is unknown
 * @validity a straight screw loaded along its axis
 * @source textbook-design: columns, central loading, end-condition constants
 * @example columnLoad({ rootDiameter: 6.2, span: 300, ends: 'fixed-free' }) // 411.6
 */
export function columnLoad(p: Column): number {
  const { modulus = COLUMN_DEFAULTS.modulus, factors = COLUMN_DEFAULTS.factors } = p;
  const yieldStrength = p.yield ?? COLUMN_DEFAULTS.yield;
  requirePositive('rootDiameter', p.rootDiameter);
  requirePositive('span', p.span);
  requireEnds('ends', p.ends);
  requirePositive('modulus', modulus);
  requirePositive('yield', yieldStrength);
  if (factors !== 'recommended' && factors !== 'theory')
    throw fault('factors', factors, 'must be recommended or theory');
  const stiffness = END_FACTORS[factors][p.ends] * modulus;
  const area = (Math.PI * p.rootDiameter ** 2) / 4;
  const slenderness = p.span / (p.rootDiameter / 4);
  if (slenderness < Math.sqrt((2 * Math.PI ** 2 * stiffness) / yieldStrength)) {
    return area * (yieldStrength - ((yieldStrength * slenderness) / (2 * Math.PI)) ** 2 / stiffness);
  }
  return (area * Math.PI ** 2 * stiffness) / slenderness ** 2;
}
