import { requireNotNegative, requirePositive } from '../../units/require.js';
import { rootNotch } from './notch.js';

/**
 * Stress at the foot of a key that stands on a face and is pushed sideways, at the sharp corner there.
 *
 *     σ = K·F·a / (l·w²/6)     K = 2
 *
 * @param p.force   F  that pushes the key                        [N]   0 or above
 * @param p.arm     a  from the face to where it pushes           [mm]  0 or above
 * @param p.length  l  of the key across the force                [mm]  > 0
 * @param p.width   w  of the key along the force                 [mm]  > 0
 * @returns σ, across the layers of what is printed with its face down [MPa]
 * @throws InputError  a value is outside its range
 * @validity a bar: a key that is lower than it is wide bears as much again by its width, which is not counted
 * @source derived: a bar in bending, and `rootNotch` of a sharp corner
 * @example keyStress({ force: 40, arm: 6, length: 10, width: 6 }) // 8
 */
export function keyStress(p: {
  readonly force: number;
  readonly arm: number;
  readonly length: number;
  readonly width: number;
}): number {
  requireNotNegative('force', p.force);
  requireNotNegative('arm', p.arm);
  requirePositive('length', p.length);
  requirePositive('width', p.width);
  const section = (p.length * p.width ** 2) / 6;
  return (rootNotch({ fillet: 0, thickness: p.width }) * p.force * p.arm) / section;
}
