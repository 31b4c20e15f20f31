import { printedAxial, printedDistance, printedInside, printedOutside } from '../../mechanics/print/printed-size.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';

/** Turns finished sizes into those of the file. */
export interface PrintSizes {
  /** holes, bores, pockets and slots */
  readonly inside: (size: number) => number;
  readonly outside: (size: number) => number;
  /** along the print axis */
  readonly along: (size: number) => number;
  /** distances in the plane of the layers */
  readonly across: (size: number) => number;
}

/** Sizes in the file for a material and a printer, with what the file is to compensate. */
export function printSizes(material: Material, printer: Printer): PrintSizes {
  const scales = printer.compensation.shrink === 'file';
  const plane = scales ? material.shrink.plane.likely : 0;
  const axial = scales ? material.shrink.axial.likely : 0;
  const inFile = printer.compensation.holes === 'file';
  return {
    inside: (finished) => printedInside({ finished, shrink: plane, offset: inFile ? printer.holeOffset : 0 }),
    outside: (finished) => printedOutside({ finished, shrink: plane, offset: inFile ? printer.outsideOffset : 0 }),
    along: (finished) => printedAxial({ finished, shrink: axial }),
    across: (finished) => printedDistance({ finished, shrink: plane }),
  };
}

/** A printer that takes every size as it is: what is drawn for it stands at the sizes in use. */
export function uncompensated(printer: Printer): Printer {
  return { ...printer, compensation: { shrink: 'slicer', holes: 'slicer' } };
}

/** Sizes in use, left as they are. */
export const TRUE_SIZES: PrintSizes = {
  inside: (size) => size,
  outside: (size) => size,
  along: (size) => size,
  across: (size) => size,
};
