import { howMany } from '../../../units/format.js';
import { type Roof, roofLayers } from '../roof.js';
import { noted } from './spread.js';

/**
 * What a note says of the roofs over pockets that open on the bed: `membrane 0.2 mm: drill through ⌀3.4 mm after printing`.
 * @param bore of the hole in the finished part [mm]
 */
export function roofWords(roof: Roof, bore: number): string {
  const layer = noted(roof.layer);
  return roof.kind === 'membrane'
    ? `roofed as printed by a membrane ${layer}: drill through ⌀${noted(bore)} after printing`
    : `roofed as printed in ${howMany(roofLayers(roof), 'step')} of ${layer} around ⌀${noted(bore)}: nothing to drill`;
}
