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

/** A tooth of a nut seen in the axial plane, before it is sliced. */
export interface SlicedTooth {
  /** axial width of the tooth at its crest, the nut's minor diameter [mm], > 0 */
  readonly crestWidth: number;
  /** radial depth of the tooth [mm], > 0 */
  readonly depth: number;
  /** α, one flank [degrees], 0 to 60 */
  readonly flankAngle: number;
  /** h, layer height [mm], > 0 */
  readonly layer: number;
  /** w, line width [mm], > 0 */
  readonly line: number;
}

/**
 * The tooth that comes out of whole layers: how far each layer reaches from the root towards the crest, drawn at the
 * layer's middle, and nothing where less than half a line would be left.
 *
 *     reach(z) = H for |z| ≤ b/2, else H − (|z| − b/2)/tan α
 *
 * @param tooth  crest width b, depth H, flank α, layer h, line w  [mm, degrees]
 * @param phase  where the middle of the tooth lies in its layer: 0.5 in the middle of it  [-]  0 to 1
 * @returns reach of each layer from the lowest up [mm]
 * @throws InputError  a value is outside its range
 * @source derived: slicing of a straight-flanked tooth
 * @example slicedTooth({ crestWidth: 0.4, depth: 1, flankAngle: 45, layer: 0.4, line: 0.4 }, 0.5) // [0.4, 0.8, 1, 0.8, 0.4]
 */
export function slicedTooth(tooth: SlicedTooth, phase: number): number[] {
  const { crestWidth, depth, flankAngle, layer, line } = tooth;
  requirePositive('crestWidth', crestWidth);
  requirePositive('depth', depth);
  requireRange('flankAngle', flankAngle, 0, 60);
  requirePositive('layer', layer);
  requirePositive('line', line);
  requireRange('phase', phase, 0, 1);
  const half = crestWidth / 2 + depth * Math.tan(radians(flankAngle));
  const count = Math.ceil(half / layer) + 1;
  const reaches = Array.from({ length: 2 * count + 1 }, (_, i) => {
    const beyond = Math.abs((i - count + phase - 0.5) * layer) - crestWidth / 2;
    if (beyond <= 1e-12) return depth;
    return depth - beyond / Math.tan(radians(flankAngle));
  });
  return reaches.filter((reach) => reach >= line / 2 - 1e-12);
}
