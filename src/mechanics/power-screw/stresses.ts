import { requireNotNegative, requirePositive } from '../../units/require.js';

/** What the body of a screw carries. */
export interface ScrewBody {
  /** dr, root diameter [mm], > 0 */
  readonly rootDiameter: number;
}

/**
 * Shear stress that a torque sets up at the surface of a screw's core.
 *
 *     τ = 16·T / (π·dr³)
 *
 * @param p.torque        T   torque in the screw   [N·mm]  0 or above
 * @param p.rootDiameter  dr  root diameter         [mm]    > 0
 * @returns τ [MPa]
 * @throws InputError  a value is outside its range
 * @source textbook-design: power screws, body stresses
 * @example bodyShearStress({ torque: 26180, rootDiameter: 28 }) // 6.074
 */
export function bodyShearStress(p: ScrewBody & { readonly torque: number }): number {
  requireNotNegative('torque', p.torque);
  requirePositive('rootDiameter', p.rootDiameter);
  return (16 * p.torque) / (Math.PI * p.rootDiameter ** 3);
}

/**
 * Axial stress in a screw's core; compression is negative.
 *
 *     σ = −4·F / (π·dr²)
 *
 * @param p.axialForce    F   pushing force     [N]   0 or above
 * @param p.rootDiameter  dr  root diameter     [mm]  > 0
 * @returns σ [MPa]
 * @throws InputError  a value is outside its range
 * @validity short screws; a slender one buckles first, see columnLoad
 * @source textbook-design: power screws, body stresses
 * @example bodyAxialStress({ axialForce: 6400, rootDiameter: 28 }) // -10.39
 */
export function bodyAxialStress(p: ScrewBody & { readonly axialForce: number }): number {
  requireNotNegative('axialForce', p.axialForce);
  requirePositive('rootDiameter', p.rootDiameter);
  return (-4 * p.axialForce) / (Math.PI * p.rootDiameter ** 2);
}

/**
 * Bending stress at the root of a square thread, its load at half depth; the tooth is p/2 wide.
 *
 *     σ = 6·F / (π·dr·n·p)
 *
 * @param p.axialForce      F   force on the threads counted   [N]   0 or above
 * @param p.rootDiameter    dr  root diameter                  [mm]  > 0
 * @param p.engagedThreads  n   number of threads that carry   [-]   > 0
 * @param p.pitch           p   pitch                          [mm]  > 0
 * @returns σ [MPa]
 * @throws InputError  a value is outside its range
 * @validity square threads; a trapezoidal tooth is wider at its root, so this is on the safe side
 * @source textbook-design: power screws, thread bending
 * @example threadBendingStress({ axialForce: 2432, rootDiameter: 28, engagedThreads: 1, pitch: 4 }) // 41.47
 */
export function threadBendingStress(
  p: ScrewBody & { readonly axialForce: number; readonly engagedThreads: number; readonly pitch: number },
): number {
  requireNotNegative('axialForce', p.axialForce);
  requirePositive('rootDiameter', p.rootDiameter);
  requirePositive('engagedThreads', p.engagedThreads);
  requirePositive('pitch', p.pitch);
  return (6 * p.axialForce) / (Math.PI * p.rootDiameter * p.engagedThreads * p.pitch);
}
