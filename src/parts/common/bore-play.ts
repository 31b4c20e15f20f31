import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { halfWidth, type Measured, shifted, widened } from '../../units/measured.js';
import type { Bore, Shaft } from './bore.js';
import { holeResidual } from './residual.js';

/** How a bore comes out on its shaft, on the diameter: its clearance, and what print and reading leave uncertain. */
export function borePlay(
  { clearance, shaft, bore }: { readonly clearance: number; readonly shaft: Shaft; readonly bore: Bore },
  made: { readonly material: Material; readonly printer: Printer },
): Measured {
  return widened(shifted(holeResidual(made, bore.diameter), clearance), halfWidth(shaft.diameter));
}
