import { requireNotNegative, requirePositive } from '../../units/require.js';

/**
 * Layers that make up one pitch of an upright thread: below 6 it cannot be printed, below 10 it is coarse.
 *
 *     n = P / h
 *
 * @param p.pitch  P  pitch             [mm]  > 0
 * @param p.layer  h  layer height      [mm]  > 0
 * @returns n [-]
 * @throws InputError  a value is not above 0
 * @source common-practice: printed threads
 * @example layersPerPitch({ pitch: 2, layer: 0.125 }) // 16
 */
export function layersPerPitch(p: { readonly pitch: number; readonly layer: number }): number {
  requirePositive('pitch', p.pitch);
  requirePositive('layer', p.layer);
  return p.pitch / p.layer;
}

/**
 * Radial depth of a thread in printed lines: below 1 it cannot be printed, below 2 it is doubtful.
 *
 *     n = H / w
 *
 * @param p.depth  H  radial depth of the thread     [mm]  0 or above
 * @param p.line   w  line width                     [mm]  > 0
 * @returns n [-]
 * @throws InputError  a value is outside its range
 * @source common-practice: printed threads
 * @example threadDepthInLines({ depth: 1, line: 0.4 }) // 2.5
 */
export function threadDepthInLines(p: { readonly depth: number; readonly line: number }): number {
  requireNotNegative('depth', p.depth);
  requirePositive('line', p.line);
  return p.depth / p.line;
}
