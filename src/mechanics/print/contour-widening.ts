import { requireNotNegative, requireRange } from '../../units/require.js';
import { radians } from '../angle.js';

/**
 * Axial play that an offset of the printed contour costs a fast thread beyond what opening its diameter gives back;
 * the printed groove is widened by as much.
 *
 *     w = h · (√(tan² α + tan² λ) − tan α)
 *
 * @param p.offset      h  diametral hole offset                [mm]       0 or above
 * @param p.flankAngle  α  one flank                            [degrees]  0 to 60
 * @param p.leadAngle   λ  lead angle at the pitch diameter     [degrees]  0 to 89
 * @returns w, total over both flanks [mm]
 * @throws InputError  a value is outside its range
 * @source derived: contour of a helical groove in the plane of a layer
 * @example contourGrooveWidening({ offset: 0.15, flankAngle: 15, leadAngle: 19.991 }) // 0.0276
 */
export function contourGrooveWidening(p: {
  readonly offset: number;
  readonly flankAngle: number;
  readonly leadAngle: number;
}): number {
  requireNotNegative('offset', p.offset);
  requireRange('flankAngle', p.flankAngle, 0, 60);
  requireRange('leadAngle', p.leadAngle, 0, 89);
  const flank = Math.tan(radians(p.flankAngle));
  return p.offset * (Math.hypot(flank, Math.tan(radians(p.leadAngle))) - flank);
}
