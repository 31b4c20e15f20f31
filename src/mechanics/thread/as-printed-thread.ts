import type { ToothForm } from './nut-thread.js';
import type { ThreadCompensation } from './printed-thread.js';

/**
 * The internal thread that comes out of a modelled one: what `printedThread` puts in, taken out again by what the
 * printer really does. With neither shrink nor offset it is the modelled thread.
 *
 *     D = D'·(1 − s) − h    P = P'·(1 − t)    w = w'·(1 − t) − h·(√(tan²α + tan²λ) − tan α)
 *
 * @param modelled         the thread in the file
 * @param by.plane      s  in-plane shrink of the printer                 [-]
 * @param by.axial      t  axial shrink of the printer                    [-]
 * @param by.offset     h  diametral hole offset of the printer           [mm]
 * @param by.leadSlope  tan λ  at the pitch diameter                      [-]
 * @returns the thread on the bench [mm]
 * @source derived: shrink and contour offset applied to the modelled size
 * @example asPrintedThread({ minor: 6, pitchDiameter: 7, major: 8, pitch: 2, grooveWidth: 1, flankSlope: 0.5 }, { plane: 0, axial: 0.01, offset: 0, leadSlope: 0 }).pitch // 1.98
 */
export function asPrintedThread(modelled: ToothForm, by: ThreadCompensation): ToothForm {
  const across = (diameter: number) => diameter * (1 - by.plane) - by.offset;
  const flankSlope = (modelled.flankSlope * (1 - by.axial)) / (1 - by.plane);
  const narrowing = by.offset * (Math.hypot(flankSlope, by.leadSlope) - flankSlope);
  return {
    minor: across(modelled.minor),
    pitchDiameter: across(modelled.pitchDiameter),
    major: across(modelled.major),
    pitch: modelled.pitch * (1 - by.axial),
    grooveWidth: modelled.grooveWidth * (1 - by.axial) - narrowing,
    flankSlope,
  };
}
