import { plain } from '../../../units/format.js';
import { type Roof, roofLayers } from '../roof.js';

/**
 * What a note says of the roofs over pockets that open on the bed: `membrane 0.2: drill through ⌀3.4 after printing`.
 * @param bore of the hole in the finished part [mm]
 */
export function roofWords(roof: Roof, bore: number): string {
  const layer = plain(roof.layer, 2);
  return roof.kind === 'membrane'
    ? `roofed as printed by a membrane ${layer}: drill through ⌀${plain(bore, 2)} after printing`
    : `roofed as printed in ${roofLayers(roof)} steps of ${layer} around ⌀${plain(bore, 2)}: nothing to drill`;
}
