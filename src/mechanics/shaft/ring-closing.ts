import { requireNotNegative, requirePositive } from '../../units/require.js';

/** A slit ring that a clamp screw closes on its shaft. */
export interface SlitRing {
  /** ΔD, bore over shaft, on the diameter [mm], 0 or above */
  readonly play: number;
  /** e, of the screw from the axis, towards the slit [mm], > 0 */
  readonly offset: number;
  /** R, middle of the wall [mm], > 0 */
  readonly radius: number;
  /** h, wall [mm], > 0 */
  readonly thickness: number;
}

/**
 * Force at the screw line that closes the bore of a slit hub on its shaft, before anything is gripped.
 *
 *     δ = π·ΔD·e / R      F = δ·E·I / (π·R·(2·e² + R²))      I = L·h³ / 12
 *
 * @param p.play       ΔD  bore over shaft, on the diameter      [mm]   0 or above
 * @param p.offset     e   of the screw from the axis            [mm]   > 0
 * @param p.radius     R   middle of the wall                    [mm]   > 0
 * @param p.thickness  h   of the wall                           [mm]   > 0
 * @param p.length     L   of the ring along the axis            [mm]   > 0
 * @param p.modulus    E   short-term, in the plane              [MPa]  > 0
 * @returns F, of all screws together [N]
 * @throws InputError  a value is outside its range
 * @validity a round wall, free at both ends of its slit; the curved beam's stiffness (+4 % at R/h 1.4, +13 % at 0.8)
 *   and its give by shear and pull (−4 %, −14 %) nearly cancel
 * @source derived: bending of a slit ring; e = R gives the handbook's 3·π·F·R³/(E·I)
 * @example closingForce({ play: 0.15, offset: 14, radius: 9.5, thickness: 7, length: 16, modulus: 2000 }) // 44.1
 */
export function closingForce(p: SlitRing & { readonly length: number; readonly modulus: number }): number {
  requireRing(p);
  requirePositive('length', p.length);
  requirePositive('modulus', p.modulus);
  const inertia = (p.length * p.thickness ** 3) / 12;
  const travel = (Math.PI * p.play * p.offset) / p.radius;
  return (travel * p.modulus * inertia) / (Math.PI * p.radius * (2 * p.offset ** 2 + p.radius ** 2));
}

/**
 * Strain at the back of a slit hub that is closed on its shaft; it stays as long as the hub is clamped.
 *
 *     ε = F·(e + R) / (L·h²/6) / E      with F of `closingForce`; L and E cancel
 *
 * @param p.play       ΔD  bore over shaft, on the diameter      [mm]   0 or above
 * @param p.offset     e   of the screw from the axis            [mm]   > 0
 * @param p.radius     R   middle of the wall                    [mm]   > 0
 * @param p.thickness  h   of the wall                           [mm]   > 0
 * @returns ε [-]
 * @throws InputError  a value is outside its range
 * @validity a straight beam; the curved one has 0.8 × of it in tension outside and 1.3 × in compression at the bore
 * @source derived: bending of a slit ring
 * @example closingStrain({ play: 0.15, offset: 14, radius: 9.5, thickness: 7 }) // 0.00397
 */
export function closingStrain(p: SlitRing): number {
  const modulus = 1000;
  const force = closingForce({ ...p, length: 1, modulus });
  return (6 * force * (p.offset + p.radius)) / (p.thickness ** 2 * modulus);
}

function requireRing(p: SlitRing): void {
  requireNotNegative('play', p.play);
  requirePositive('offset', p.offset);
  requirePositive('radius', p.radius);
  requirePositive('thickness', p.thickness);
}
