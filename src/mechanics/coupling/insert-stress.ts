import { requireNotNegative, requirePositive, requireWhole } from '../../units/require.js';

/**
 * Pressure between a jaw and a lobe of the insert. One lobe in two carries, whichever way it turns.
 *
 *     σ = T / (n·r·l·b)
 *
 * @param p.torque      T  through the coupling                      [N·mm]  0 or above
 * @param p.jaws        n  jaws of one hub                           [-]     whole, 2 to 12
 * @param p.meanRadius  r  middle of the lobes from the axis         [mm]    > 0
 * @param p.length      l  radial length in contact                  [mm]    > 0
 * @param p.height      b  axial height in contact                   [mm]    > 0
 * @returns σ [MPa]
 * @throws InputError  a value is outside its range
 * @source common-practice: pressure on the lobes of a jaw coupling
 * @example lobeStress({ torque: 1000, jaws: 3, meanRadius: 10.5, length: 7, height: 10 }) // 0.4535
 */
export function lobeStress(p: {
  readonly torque: number;
  readonly jaws: number;
  readonly meanRadius: number;
  readonly length: number;
  readonly height: number;
}): number {
  requireNotNegative('torque', p.torque);
  requireWhole('jaws', p.jaws, 2, 12);
  requirePositive('meanRadius', p.meanRadius);
  requirePositive('length', p.length);
  requirePositive('height', p.height);
  return p.torque / (p.jaws * p.meanRadius * p.length * p.height);
}

/** Pressure a lobe of Shore 95 A may carry, printed and reversing, in steady running and at its worst [MPa]. */
const LOBE_ALLOWANCE_95A = { normal: 1, peak: 2 } as const;

/**
 * Pressure that the lobes of a printed insert may carry: that of Shore 95 A in proportion to the stiffness.
 *
 *     σ_allowed = σ_95A·E / E_95A
 *
 * @param p.modulus    E  of the insert                              [MPa]  > 0
 * @param p.reference  E_95A  of Shore 95 A                          [MPa]  > 0
 * @returns steady and greatest pressure [MPa]
 * @throws InputError  a value is not above 0
 * @source common-practice: 1.0 and 2.0 MPa for printed 95 A, 1.5 and 3.0 MPa for 98 A
 * @example lobeAllowance({ modulus: 61.5, reference: 41 }) // { normal: 1.5, peak: 3 }
 */
export function lobeAllowance(p: { readonly modulus: number; readonly reference: number }): {
  readonly normal: number;
  readonly peak: number;
} {
  requirePositive('modulus', p.modulus);
  requirePositive('reference', p.reference);
  const share = p.modulus / p.reference;
  return { normal: LOBE_ALLOWANCE_95A.normal * share, peak: LOBE_ALLOWANCE_95A.peak * share };
}
