import { requireNotNegative, requirePositive, requireWhole } from '../../units/require.js';

/** Stresses at the foot of a jaw [MPa]. */
export interface JawStresses {
  /** bending: it opens the layers of a hub that is printed standing */
  readonly bending: number;
  /** shear along the layers */
  readonly shear: number;
}

/**
 * Stresses at the foot of a jaw that takes its share at half the insert's height.
 *
 *     F = T / (n·r)     σ = F·h / (l·w²/6)     τ = 1.5·F / (l·w)
 *
 * @param p.torque      T  through the coupling                [N·mm]  0 or above
 * @param p.jaws        n  jaws of one hub                     [-]     whole, 2 to 12
 * @param p.meanRadius  r  middle of the jaw from the axis     [mm]    > 0
 * @param p.arm         h  of the force over the foot          [mm]    > 0
 * @param p.length      l  radial length of the jaw            [mm]    > 0
 * @param p.width       w  tangential width of the jaw         [mm]    > 0
 * @returns bending and shear [MPa]
 * @throws InputError  a value is outside its range
 * @source derived: short cantilever of rectangular section
 * @example jawStresses({ torque: 900, jaws: 3, meanRadius: 10, arm: 5, length: 6, width: 5 }).bending // 6
 */
export function jawStresses(p: {
  readonly torque: number;
  readonly jaws: number;
  readonly meanRadius: number;
  readonly arm: number;
  readonly length: number;
  readonly width: number;
}): JawStresses {
  requireNotNegative('torque', p.torque);
  requireWhole('jaws', p.jaws, 2, 12);
  requirePositive('meanRadius', p.meanRadius);
  requirePositive('arm', p.arm);
  requirePositive('length', p.length);
  requirePositive('width', p.width);
  const force = p.torque / (p.jaws * p.meanRadius);
  return { bending: (6 * force * p.arm) / (p.length * p.width ** 2), shear: (1.5 * force) / (p.length * p.width) };
}
