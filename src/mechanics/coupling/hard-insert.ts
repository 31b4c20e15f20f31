import { requirePositive, requireWhole } from '../../units/require.js';
import { elastomerModulus } from './elastomer.js';

/** Up to this stiffness lobes even out what they carry, and give as much as couplings of their sort are built for: Shore 98 A [MPa]. */
const EVENING = elastomerModulus({ hardness: 98, scale: 'A' });

/** Jaws that carry where nothing between them gives, however many there are: fitted halves. @source memory */
const FITTED = 2;

/**
 * Share of the misalignment of a soft insert that a harder one takes, so that it pushes jaws and shafts aside no harder.
 *
 *     s = min(1, E_98A / E)
 *
 * @param p.modulus  E  of the insert  [MPa]  > 0
 * @returns s [-]
 * @throws InputError  the modulus is not above 0
 * @source common-practice: inserts of 64 Shore D are let do about half of what those of 92 Shore A are
 * @example insertGive({ modulus: 114.2 }) // 0.5
 */
export function insertGive(p: { readonly modulus: number }): number {
  requirePositive('modulus', p.modulus);
  return Math.min(1, EVENING / p.modulus);
}

/**
 * Jaws that carry the torque: all of them with a soft insert between, two with one that does not give.
 *
 *     z = 2 + (n − 2)·s        s as of `insertGive`
 *
 * @param p.jaws     n  jaws of one hub    [-]    whole, 2 to 12
 * @param p.modulus  E  of the insert      [MPa]  > 0
 * @returns z [-]
 * @throws InputError  a value is outside its range
 * @source memory: one or two jaws carry with a hard insert or none; between, in proportion to what it gives
 * @example carryingJaws({ jaws: 3, modulus: 114.2 }) // 2.5
 */
export function carryingJaws(p: { readonly jaws: number; readonly modulus: number }): number {
  requireWhole('jaws', p.jaws, 2, 12);
  return FITTED + (p.jaws - FITTED) * insertGive(p);
}
