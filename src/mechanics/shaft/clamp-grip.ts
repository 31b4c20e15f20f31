import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive, requireRange, requireWhole } from '../../units/require.js';

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
 * Torque at which a shaft slips in a printed clamp hub, each screw counted once, after the plastic has crept.
 *
 *     T = n·µ·q·F·d
 *
 * @param p.screws    n  clamp screws on this shaft                          [-]   whole, 1 to 12
 * @param p.preload   F  force of one screw, freshly tightened               [N]   0 or above
 * @param p.diameter  d  shaft diameter                                      [mm]  > 0
 * @param p.friction  µ  friction on the shaft                               [-]   0 to 2
 * @param p.kept      q  share of the preload that is left after creep       [-]   0 to 1, default 0.5
 * @returns T [N·mm]
 * @throws InputError  a value is outside its range
 * @validity line contact of one slit hub; on the safe side of `gripTorque`, since the hub's own stiffness takes its part
 * @source common-practice: printed clamp hubs
 * @example clampHubTorque({ screws: 1, preload: 500, diameter: 5, friction: 0.2 }) // 250
 */
export function clampHubTorque(p: {
  readonly screws: number;
  readonly preload: number;
  readonly diameter: number;
  readonly friction: number;
  readonly kept?: number | undefined;
}): number {
  const { kept = 0.5 } = p;
  requireWhole('screws', p.screws, 1, 12);
  requireRange('kept', kept, 0, 1);
  requireNotNegative('preload', p.preload);
  return gripTorque({ normalForce: p.screws * p.preload * kept, diameter: p.diameter, friction: p.friction });
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
