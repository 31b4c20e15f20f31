import { offsetAt } from '../../mechanics/print/printed-size.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { type Measured, plusMinus, sum } from '../../units/measured.js';

interface Printed {
  readonly printer: Printer;
  readonly material: Material;
}

/** How shrink changes an in-plane size from what was wanted: its spread, or all of it where nobody compensates. */
export function planeResidual({ printer, material }: Printed, size: number): Measured {
  return leftOf(material.shrink.plane, printer, size);
}

/** The same of a length along the print axis. */
export function axialResidual({ printer, material }: Printed, length: number): Measured {
  return leftOf(material.shrink.axial, printer, length);
}

function leftOf({ likely, most }: Measured, { compensation }: Printer, size: number): Measured {
  return plusMinus(compensation.shrink === 'none' ? -likely * size : 0, (most - likely) * size);
}

/**
 * How a printed hole comes out against what was wanted, on the diameter: shrink, and what is left of the printer's own hole
 * offset, or all of it where nobody compensates.
 */
export function holeResidual(part: Printed, diameter: number): Measured {
  const { holeOffset, holeSpread, compensation } = part.printer;
  const left = compensation.holes === 'none' ? -offsetAt(holeOffset, diameter) : 0;
  return sum(planeResidual(part, diameter), plusMinus(left, holeSpread));
}

/** Scatter of a printed hole's place, on top of shrink, mm. @source common-practice */
export const PLACE_SCATTER = 0.1;
