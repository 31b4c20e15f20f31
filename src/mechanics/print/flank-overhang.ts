import { requirePositive, requireRange } from '../../units/require.js';
import { radians } from '../angle.js';

/** A thread flank printed with the axis upright. */
export interface PrintedFlank {
  /** h, layer height [mm], > 0 */
  readonly layer: number;
  /** α, one flank [degrees], 0 to 60 */
  readonly flankAngle: number;
  /** λ, lead angle at the pitch diameter [degrees], 0 to below 90 */
  readonly leadAngle: number;
}

/**
 * How far each layer of an upright thread reaches out over the one below, on the underside of the tooth.
 *
 *     step = h / √(tan² α + tan² λ)
 *
 * @param p.layer       h  layer height                         [mm]       > 0
 * @param p.flankAngle  α  one flank                            [degrees]  0 to 60
 * @param p.leadAngle   λ  lead angle at the pitch diameter     [degrees]  0 to 89, not both 0
 * @returns step [mm]
 * @throws InputError  a value is outside its range
 * @source derived: slope of a helical flank against the bed
 * @example flankOverhangStep({ layer: 0.1, flankAngle: 15, leadAngle: 5.197 }) // 0.3534
 */
export function flankOverhangStep(p: PrintedFlank): number {
  requirePositive('layer', p.layer);
  requireRange('flankAngle', p.flankAngle, 0, 60);
  requireRange('leadAngle', p.leadAngle, 0, 89);
  const slope = flankSlope(p.flankAngle, p.leadAngle);
  requirePositive('flankAngle and leadAngle together', slope);
  return p.layer / slope;
}

/**
 * Largest layer height that keeps the overhang step within a bound.
 *
 *     h = step · √(tan² α + tan² λ)
 *
 * @param p.step        largest step allowed                    [mm]       > 0
 * @param p.flankAngle  α  one flank                            [degrees]  0 to 60
 * @param p.leadAngle   λ  lead angle at the pitch diameter     [degrees]  0 to 89
 * @returns h [mm]
 * @throws InputError  a value is outside its range
 * @source derived: slope of a helical flank against the bed
 * @example largestLayer({ step: 0.315, flankAngle: 15, leadAngle: 5.197 }) // 0.0891
 */
export function largestLayer(p: {
  readonly step: number;
  readonly flankAngle: number;
  readonly leadAngle: number;
}): number {
  requirePositive('step', p.step);
  requireRange('flankAngle', p.flankAngle, 0, 60);
  requireRange('leadAngle', p.leadAngle, 0, 89);
  return p.step * flankSlope(p.flankAngle, p.leadAngle);
}

/** √(tan² α + tan² λ): slope of the flank against the bed [-]. */
function flankSlope(flankAngle: number, leadAngle: number): number {
  return Math.hypot(Math.tan(radians(flankAngle)), Math.tan(radians(leadAngle)));
}
