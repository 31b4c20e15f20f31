import { offsetAt } from '../../mechanics/print/printed-size.js';
import { residualSpread } from '../../mechanics/print/residual-spread.js';
import { difference, exactly, type Measured, plusMinus, scaled, shifted, sum } from '../../units/measured.js';
import type { NutDesign } from './dimensions.js';

/** What the printed thread will leave on this screw, with what is known of printer, material and readings. */
export interface PredictedFit {
  /** diametral clearance at the pitch line */
  readonly diametral: Measured;
  /** axial play over both flanks, pitch error aside */
  readonly play: Measured;
  /** shrink along the axis that nobody takes out, at its worst, as a fraction */
  readonly axialResidual: number;
}

/** Works out the fit of the nut as it will come off the printer. */
export function predictedFit(design: NutDesign): PredictedFit {
  const { screw, fit, finished, material } = design;
  const wanted = finished.thread.pitchDiameter;
  const tan = finished.thread.flankSlope;
  const looseness = difference(exactly(screw.pitchDiameter.likely), screw.pitchDiameter);
  const diametral = sum(exactly(fit.diametral), looseness, holeResidual(design, wanted), planeResidual(design, wanted));
  const play = shifted(scaled(diametral, tan), fit.axial - lostToContour(design));
  const spread = material.shrink.axial.most - material.shrink.axial.likely;
  const leftIn = design.printer.compensation.shrink === 'none' ? Math.abs(material.shrink.axial.likely) : 0;
  return { diametral, play, axialResidual: leftIn + spread };
}

/** How a hole of this diameter differs from what was wanted, shrink aside: nothing but scatter once compensated. */
export function holeResidual({ printer }: NutDesign, diameter: number): Measured {
  const left = printer.compensation.holes === 'none' ? -offsetAt(printer.holeOffset, diameter) : 0;
  return plusMinus(left, residualSpread('pa').holeOffset);
}

/** How shrink changes an in-plane size from what was wanted: its spread, or all of it where nobody compensates. */
export function planeResidual({ printer, material }: NutDesign, size: number): Measured {
  const { plane } = material.shrink;
  const left = printer.compensation.shrink === 'none' ? -plane.likely * size : 0;
  return plusMinus(left, (plane.most - plane.likely) * size);
}

/** Play that a fast thread loses to an offset of its contour where nobody compensates for it. */
function lostToContour({ printer, finished }: NutDesign): number {
  if (printer.compensation.holes !== 'none') return 0;
  const { flankSlope, pitchDiameter } = finished.thread;
  const leadSlope = finished.lead / (Math.PI * pitchDiameter);
  return offsetAt(printer.holeOffset, pitchDiameter) * (Math.hypot(flankSlope, leadSlope) - flankSlope);
}
