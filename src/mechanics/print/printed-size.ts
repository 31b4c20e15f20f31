import { fault } from '../../units/faults.js';
import { requirePositive, requireRange } from '../../units/require.js';

/** A diametral offset [mm]: one number, or a line over the finished diameter. */
export type PrintOffset = number | { readonly at_zero: number; readonly per_mm: number };

/**
 * An offset at one diameter.
 *
 *     o = o₀ + k·D
 *
 * @param offset    the number o₀ [mm], or the line {at_zero: o₀ [mm], per_mm: k [mm/mm]}
 * @param diameter  D  finished diameter [mm], > 0
 * @returns o, diametral [mm]
 * @throws InputError  a value is not finite, or the diameter not above 0
 * @source common-practice: hole offset as a line over the diameter
 * @example offsetAt({ at_zero: 0.1, per_mm: 0.005 }, 10) // 0.15
 */
export function offsetAt(offset: PrintOffset, diameter: number): number {
  requirePositive('diameter', diameter);
  const value = typeof offset === 'number' ? offset : offset.at_zero + offset.per_mm * diameter;
  if (!Number.isFinite(value)) throw fault('offset', value, 'must be a number');
  return value;
}

/**
 * Inside diameter or slot to draw so that it comes out as wanted.
 *
 *     printed = (finished + h) / (1 − s)
 *
 * @param p.finished  diameter wanted in use                                      [mm]  > 0
 * @param p.shrink    s  in-plane shrink, as a fraction of the modelled size      [-]   −0.1 to 0.1
 * @param p.offset    h  how much smaller than modelled a hole comes out, diametral [mm], or a line over the diameter
 * @returns diameter in the file [mm]
 * @throws InputError  a value is outside its range
 * @source derived: shrink and offset solved for the modelled size
 * @example printedInside({ finished: 10, shrink: 0.01, offset: 0.15 }) // 10.2525
 */
export function printedInside(p: {
  readonly finished: number;
  readonly shrink: number;
  readonly offset: PrintOffset;
}): number {
  requirePositive('finished', p.finished);
  return unshrunk(p.finished + offsetAt(p.offset, p.finished), p.shrink);
}

/**
 * Outside diameter to draw so that it comes out as wanted.
 *
 *     printed = (finished + o) / (1 − s)
 *
 * @param p.finished  diameter wanted in use                                      [mm]  > 0
 * @param p.shrink    s  in-plane shrink, as a fraction of the modelled size      [-]   −0.1 to 0.1
 * @param p.offset    o  outside offset, diametral [mm], or a line over the diameter; default 0
 * @returns diameter in the file [mm]
 * @throws InputError  a value is outside its range
 * @source derived: shrink and offset solved for the modelled size
 * @example printedOutside({ finished: 22, shrink: 0.01 }) // 22.222
 */
export function printedOutside(p: {
  readonly finished: number;
  readonly shrink: number;
  readonly offset?: PrintOffset | undefined;
}): number {
  requirePositive('finished', p.finished);
  return unshrunk(p.finished + offsetAt(p.offset ?? 0, p.finished), p.shrink);
}

/**
 * Distance in the plane of the bed to draw, such as between hole centres.
 *
 *     printed = finished / (1 − s)
 *
 * @param p.finished  distance wanted in use                                      [mm]  any sign
 * @param p.shrink    s  in-plane shrink, as a fraction of the modelled size      [-]   −0.1 to 0.1
 * @returns distance in the file [mm]
 * @throws InputError  the shrink is outside its range
 * @source derived: shrink solved for the modelled size
 * @example printedDistance({ finished: 31, shrink: 0.005 }) // 31.156
 */
export function printedDistance(p: { readonly finished: number; readonly shrink: number }): number {
  if (!Number.isFinite(p.finished)) throw fault('finished', p.finished, 'must be a number');
  return unshrunk(p.finished, p.shrink);
}

/**
 * Length along the print axis to draw, pitch and lead included.
 *
 *     printed = finished / (1 − t)
 *
 * @param p.finished  length wanted in use                                     [mm]  any sign
 * @param p.shrink    t  axial shrink, as a fraction of the modelled size      [-]   −0.1 to 0.1
 * @returns length in the file [mm]
 * @throws InputError  the shrink is outside its range
 * @source derived: shrink solved for the modelled size
 * @example printedAxial({ finished: 15, shrink: 0.006 }) // 15.0905
 */
export function printedAxial(p: { readonly finished: number; readonly shrink: number }): number {
  return printedDistance(p);
}

function unshrunk(size: number, shrink: number): number {
  requireRange('shrink', shrink, -0.1, 0.1);
  return size / (1 - shrink);
}
