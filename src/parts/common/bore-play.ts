import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { type Measured, plusMinus } from '../../units/measured.js';
import type { Bore, Shaft } from './bore.js';
import { planeResidual } from './residual.js';

/** How a bore comes out on its shaft, on the diameter: its clearance, and what print and reading leave uncertain. */
export function borePlay(
  { clearance, shaft, bore }: { readonly clearance: number; readonly shaft: Shaft; readonly bore: Bore },
  made: { readonly material: Material; readonly printer: Printer },
): Measured {
  const { holeOffset, holeSpread, compensation } = made.printer;
  const shrink = planeResidual(made, bore.diameter);
  const left = compensation.holes === 'none' ? holeOffset.at_zero + holeOffset.per_mm * bore.diameter : 0;
  const { least, likely, most } = shaft.diameter;
  const reading = Math.max(most - likely, likely - least);
  return plusMinus(clearance + shrink.likely - left, holeSpread + (shrink.most - shrink.likely) + reading);
}
