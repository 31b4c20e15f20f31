import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Angle by which the loaded lobes let one hub run behind the other.
 *
 *     φ = σ·w / (E·r)
 *
 * @param p.stress      σ  pressure on the loaded lobes       [MPa]  0 or above
 * @param p.width       w  width of a lobe                    [mm]   > 0
 * @param p.modulus     E  of the insert                      [MPa]  > 0
 * @param p.meanRadius  r  middle of the lobes from the axis  [mm]   > 0
 * @returns φ [degrees]
 * @throws InputError  a value is outside its range
 * @source derived: compression of a block
 * @example windUp({ stress: 0.41, width: 4.5, modulus: 41, meanRadius: 10 }) // 0.2578
 */
export function windUp(p: {
  readonly stress: number;
  readonly width: number;
  readonly modulus: number;
  readonly meanRadius: number;
}): number {
  requireNotNegative('stress', p.stress);
  requirePositive('width', p.width);
  requirePositive('modulus', p.modulus);
  requirePositive('meanRadius', p.meanRadius);
  return ((p.stress * p.width) / (p.modulus * p.meanRadius)) * (180 / Math.PI);
}

/**
 * What an angle of lost motion is along the screw.
 *
 *     a = φ/360°·lead
 *
 * @param p.angle  φ     lost motion of the coupling          [degrees]  0 or above
 * @param p.lead   lead  travel per turn                      [mm]       > 0
 * @returns a [mm]
 * @throws InputError  a value is outside its range
 * @source derived: the screw's own motion
 * @example axialLostMotion({ angle: 1, lead: 8 }) // 0.0222
 */
export function axialLostMotion(p: { readonly angle: number; readonly lead: number }): number {
  requireNotNegative('angle', p.angle);
  requirePositive('lead', p.lead);
  return (p.angle / 360) * p.lead;
}
