import type { ToothForm } from './nut-thread.js';

/** What is put into the size of a thread before it is printed. */
export interface ThreadCompensation {
  /** s, in-plane shrink as a fraction of the modelled size */
  readonly plane: number;
  /** t, axial shrink as a fraction of the modelled size */
  readonly axial: number;
  /** h, diametral hole offset at the pitch diameter */
  readonly offset: number;
  /** tangent of the lead angle at the pitch diameter */
  readonly leadSlope: number;
}

/**
 * An internal thread as it must stand in the file so that it comes out finished. The hole offset is taken once, at the
 * pitch diameter, so that the thread keeps its depth; a fast thread loses more play to a contour offset than the
 * larger diameter gives back, so its groove is widened besides.
 *
 *     D' = (D + h)/(1 − s)    P' = P/(1 − t)    w' = (w + h·(√(tan²α + tan²λ) − tan α))/(1 − t)
 *
 * @param finished         the thread in use
 * @param by.plane      s  in-plane shrink                                [-]
 * @param by.axial      t  axial shrink                                   [-]
 * @param by.offset     h  diametral hole offset                          [mm]
 * @param by.leadSlope  tan λ  at the pitch diameter                      [-]
 * @returns the printed form [mm]
 * @source derived: shrink and contour offset solved for the modelled size
 * @example printedThread({ minor: 6, pitchDiameter: 7, major: 8, pitch: 2, grooveWidth: 1, flankSlope: 0.5 }, { plane: 0, axial: 0.2, offset: 0, leadSlope: 0 }).pitch // 2.5
 */
export function printedThread(finished: ToothForm, by: ThreadCompensation): ToothForm {
  const across = (diameter: number) => (diameter + by.offset) / (1 - by.plane);
  const widening = by.offset * (Math.hypot(finished.flankSlope, by.leadSlope) - finished.flankSlope);
  return {
    minor: across(finished.minor),
    pitchDiameter: across(finished.pitchDiameter),
    major: across(finished.major),
    pitch: finished.pitch / (1 - by.axial),
    grooveWidth: (finished.grooveWidth + widening) / (1 - by.axial),
    flankSlope: (finished.flankSlope * (1 - by.plane)) / (1 - by.axial),
  };
}
