import { fault } from '../../units/faults.js';
import { requirePositive } from '../../units/require.js';

/**
 * Torque that the flat of a D shaft carries by itself: half of the flat presses, most at its edge.
 *
 *     T = p·L·w² / 12      w = 2·√(t·(d − t)), chord of the flat
 *
 * @param p.diameter   d  shaft diameter                          [mm]   > 0
 * @param p.flatDepth  t  depth of the flat                       [mm]   > 0, below d/2
 * @param p.length     L  engaged length of the flat              [mm]   > 0
 * @param p.pressure   p  pressure allowed at the flat's edge     [MPa]  > 0
 * @returns T [N·mm]
 * @throws InputError  a value is outside its range
 * @source derived: pressure growing in proportion from the middle of the flat to its edge
 * @example flatTorque({ diameter: 5, flatDepth: 0.5, length: 12, pressure: 30 }) // 270
 */
export function flatTorque(p: {
  readonly diameter: number;
  readonly flatDepth: number;
  readonly length: number;
  readonly pressure: number;
}): number {
  requirePositive('diameter', p.diameter);
  requirePositive('flatDepth', p.flatDepth);
  if (p.flatDepth >= p.diameter / 2) throw fault('flatDepth', p.flatDepth, 'must be below half the shaft diameter');
  requirePositive('length', p.length);
  requirePositive('pressure', p.pressure);
  const chordSquared = 4 * p.flatDepth * (p.diameter - p.flatDepth);
  return (p.pressure * p.length * chordSquared) / 12;
}
