import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive, requireRange } from '../../units/require.js';
import { BEDDED } from '../strength/relaxation.js';

/** How the pressure of a clamp spreads around the shaft: only along two lines, as a cosine, or evenly. */
export type ClampContact = 'line' | 'cosine' | 'uniform';

const CONTACT_FACTORS: Readonly<Record<ClampContact, number>> = { line: 1, cosine: 4 / Math.PI, uniform: Math.PI / 2 };

/**
 * Torque at which a shaft slips in a clamp.
 *
 *     T = c·µ·FN·d      c = 1 line (rigid halves), 4/π cosine, π/2 uniform (conforming)
 *
 * @param p.normalForce  FN  force that presses one half on the shaft; one screw a side of strength F gives 2·F  [N]  0 or above
 * @param p.diameter     d   shaft diameter           [mm]  > 0
 * @param p.friction     µ   friction on the shaft    [-]   0 to 2
 * @param p.contact          how the pressure spreads; default line, the one to design with
 * @returns T [N·mm]
 * @throws InputError  a value is outside its range, or `contact` is unknown
 * @source derived: integrals of the pressure around the shaft
 * @example gripTorque({ normalForce: 4420, diameter: 8, friction: 0.15 }) // 5304
 */
export function gripTorque(p: {
  readonly normalForce: number;
  readonly diameter: number;
  readonly friction: number;
  readonly contact?: ClampContact | undefined;
}): number {
  const { contact = 'line' } = p;
  requireNotNegative('normalForce', p.normalForce);
  requirePositive('diameter', p.diameter);
  requireRange('friction', p.friction, 0, 2);
  if (!Object.hasOwn(CONTACT_FACTORS, contact)) throw fault('contact', contact, 'must be line, cosine or uniform');
  return CONTACT_FACTORS[contact] * p.friction * p.normalForce * p.diameter;
}

/**
 * Force across the slit of a printed hub that is left to grip: preload and the force that closes the hub are both
 * strains held in the same plastic, and relax alike.
 *
 *     F = q·(0.9·F0 − Fs)      never below 0
 *
 * @param p.preload  F0  of all screws that count, freshly tightened    [N]  0 or above
 * @param p.closing  Fs  that closes the hub on its shaft               [N]  0 or above
 * @param p.kept     q   share of a held strain's force that is left    [-]  0 to 1
 * @returns F [N]
 * @throws InputError  a value is outside its range
 * @source derived: relaxation of strains in one plastic
 * @example keptForce({ preload: 500, closing: 44.1, kept: 0.556 }) // 225.7
 */
export function keptForce(p: { readonly preload: number; readonly closing: number; readonly kept: number }): number {
  requireNotNegative('preload', p.preload);
  requireNotNegative('closing', p.closing);
  requireRange('kept', p.kept, 0, 1);
  return p.kept * Math.max(0, BEDDED * p.preload - p.closing);
}

/**
 * Axial force at which a shaft slips out of a clamp, the same contact as its torque.
 *
 *     Fax = 2·T / d
 *
 * @param p.torque    T  torque at which it slips     [N·mm]  0 or above
 * @param p.diameter  d  shaft diameter               [mm]    > 0
 * @returns Fax [N]
 * @throws InputError  a value is outside its range
 * @source derived: the same friction along the shaft
 * @example gripPull({ torque: 250, diameter: 5 }) // 100
 */
export function gripPull(p: { readonly torque: number; readonly diameter: number }): number {
  requireNotNegative('torque', p.torque);
  requirePositive('diameter', p.diameter);
  return (2 * p.torque) / p.diameter;
}
