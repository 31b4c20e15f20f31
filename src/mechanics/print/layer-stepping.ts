import { requirePositive, requireRange } from '../../units/require.js';
import { radians } from '../angle.js';
import type { PrintedFlank } from './flank-overhang.js';

/**
 * Axial play that a fresh print loses at both flanks because its teeth come out of whole layers. Each layer is drawn
 * at its middle, and its edge is a half round of the layer's height; what of that bulge stands out of the flank is in
 * the way until the screw has worn it off. Where a layer reaches out over the one below by more than the line that
 * should carry it, the line hangs down besides, at most by its own height.
 *
 *     loss = h·(1 − sin β)/cos β + h·min(1, max(0, r − 1))     tan β = √(tan² α + tan² λ),  r = h/(w·tan β)
 *
 * @param p.layer       h  layer height                         [mm]       > 0
 * @param p.flankAngle  α  one flank                            [degrees]  0 to 60
 * @param p.leadAngle   λ  lead angle at the pitch diameter     [degrees]  0 to 89, not both 0
 * @param p.line        w  line width                           [mm]       > 0
 * @returns loss, over both flanks [mm]; 0 is what is left of it after running in
 * @throws InputError  a value is outside its range
 * @validity upright threads; layers of at most 0.8 nozzle
 * @source derived: half round edges of layers against a straight flank; the hanging line is common practice
 * @example layerStepping({ layer: 0.1, flankAngle: 15, leadAngle: 5.197, line: 0.45 }) // 0.0756
 */
export function layerStepping(p: PrintedFlank & { readonly line: number }): number {
  requirePositive('layer', p.layer);
  requireRange('flankAngle', p.flankAngle, 0, 60);
  requireRange('leadAngle', p.leadAngle, 0, 89);
  requirePositive('line', p.line);
  const slope = Math.hypot(Math.tan(radians(p.flankAngle)), Math.tan(radians(p.leadAngle)));
  requirePositive('flankAngle and leadAngle together', slope);
  const bulge = Math.hypot(1, slope) - slope;
  const reach = p.layer / (p.line * slope);
  return p.layer * (bulge + Math.min(1, Math.max(0, reach - 1)));
}
