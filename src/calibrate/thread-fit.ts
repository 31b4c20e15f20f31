import { offsetAt } from '../mechanics/print/printed-size.js';
import { asPrintedThread } from '../mechanics/thread/as-printed-thread.js';
import type { ToothForm } from '../mechanics/thread/nut-thread.js';
import { printedThread } from '../mechanics/thread/printed-thread.js';
import type { OffsetLine } from '../presets/printer.js';
import type { Results } from './results.js';

/** What a printer does to a bore or a thread. */
export interface Process {
  readonly plane: number;
  readonly axial: number;
  readonly holeOffset: OffsetLine;
}

/** Clearances of a thread, mm. */
export interface Clearances {
  readonly diametral: number;
  readonly axial: number;
}

/**
 * Clearances that a drawn thread really came out with: drawn with what the coupon's sheet believed of the printer,
 * printed by what the readings say of it.
 *
 * @param meant    clearances the thread was drawn for           [mm]
 * @param screw    pitch diameter, pitch, lead, flank            [mm, degrees]
 * @param believed what it was drawn with                        [mm, fractions]
 * @param real     what the printer does                         [mm, fractions]
 * @returns clearances as they came out  [mm]
 * @example cameOut({ diametral: 0.3, axial: 0.1 }, { pitch_diameter: 7, pitch: 2, lead: 2, flank_angle: 15 },
 *   { plane: 0, axial: 0, holeOffset: { at_zero: 0.1, per_mm: 0 } },
 *   { plane: 0, axial: 0, holeOffset: { at_zero: 0.15, per_mm: 0 } }).diametral // 0.25
 */
export function cameOut(
  meant: Clearances,
  screw: NonNullable<Results['screw']>,
  believed: Process,
  real: Process,
): Clearances {
  const { pitch_diameter, pitch, lead, flank_angle } = screw;
  const finished: ToothForm = {
    minor: pitch_diameter - pitch / 2,
    pitchDiameter: pitch_diameter + meant.diametral,
    major: pitch_diameter + pitch / 2,
    pitch,
    grooveWidth: pitch / 2 + meant.axial,
    flankSlope: Math.tan((flank_angle * Math.PI) / 180),
  };
  const by = ({ plane, axial, holeOffset }: Process) => ({
    plane,
    axial,
    offset: offsetAt(holeOffset, finished.pitchDiameter),
    leadSlope: lead / (Math.PI * finished.pitchDiameter),
  });
  const printed = asPrintedThread(printedThread(finished, by(believed)), by(real));
  return { diametral: printed.pitchDiameter - pitch_diameter, axial: printed.grooveWidth - pitch / 2 };
}

/** Size that a drawn pocket came out with, mm. */
export function pocketCameOut(size: number, believed: Process, real: Process): number {
  const drawn = (size + offsetAt(believed.holeOffset, size)) / (1 - believed.plane);
  const { at_zero, per_mm } = real.holeOffset;
  return (drawn * (1 - real.plane) - at_zero) / (1 + per_mm);
}
