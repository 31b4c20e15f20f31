import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { type Measured, plusMinus } from '../../units/measured.js';

/** How shrink changes an in-plane size from what was wanted: its spread, or all of it where nobody compensates. */
export function planeResidual(
  { printer, material }: { readonly printer: Printer; readonly material: Material },
  size: number,
): Measured {
  const { plane } = material.shrink;
  const left = printer.compensation.shrink === 'none' ? -plane.likely * size : 0;
  return plusMinus(left, (plane.most - plane.likely) * size);
}

/** Scatter of a printed hole's place, on top of shrink, mm. @source common-practice */
export const PLACE_SCATTER = 0.1;
