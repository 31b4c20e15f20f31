import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive } from '../../units/require.js';

/** What the flange's turning adds, read off finite elements of 260 bodies of revolution, which have 1.9 ± 0.3 [-]. */
const TURNED = 2.2;

/**
 * Stress along a body where it leaves its flange, which is across the layers of one that is printed standing. The load draws
 * the wall, and the flange that is held further out turns it.
 *
 *     σ = F/A · (1 + 2.2·λ·√(a·r) / t)
 *
 * @param p.force      F  along the axis                                              [N]    0 or above
 * @param p.area       A  of the wall's section                                       [mm²]  > 0
 * @param p.arm        a  from the middle of the wall to what holds the flange        [mm]   0 or above
 * @param p.radius     r  of the middle of the wall                                   [mm]   > 0
 * @param p.thickness  t  of the flange                                               [mm]   > 0
 * @param p.crowding   λ  what the worst strip takes over what it would, spread all round  [-]  1 or above, default 1
 * @returns σ at the skin of the wall, without what its corner adds [MPa]
 * @throws InputError  a value is outside its range
 * @validity walls of 0.2 to 2.5 flanges, arms of 0.3 to 4 of them; 19 of 20 of those bodies have less, none more than 1.14 times it
 * @source derived: finite elements of bodies of revolution, their stress along the axis made even over the wall
 * @example bodyRoot({ force: 100, area: 142, arm: 6.65, radius: 6.85, thickness: 5 }) // 2.796
 */
export function bodyRoot(p: {
  readonly force: number;
  readonly area: number;
  readonly arm: number;
  readonly radius: number;
  readonly thickness: number;
  readonly crowding?: number;
}): number {
  requireNotNegative('force', p.force);
  requirePositive('area', p.area);
  requireNotNegative('arm', p.arm);
  requirePositive('radius', p.radius);
  requirePositive('thickness', p.thickness);
  const { crowding = 1 } = p;
  if (!(crowding >= 1)) throw fault('crowding', crowding, 'must be 1 or above');
  const turned = (TURNED * crowding * Math.sqrt(p.arm * p.radius)) / p.thickness;
  return (p.force / p.area) * (1 + turned);
}
