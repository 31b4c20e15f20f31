import { plain } from '../../../units/format.js';
import { type Roof, roofLayers, takesRoof } from '../roof.js';

/**
 * What a note says of the roofs over pockets that open on the bed: `membrane 0.2: drill through ⌀3.4 after printing`.
 * @param floor what is left of the plate above the pocket as printed [mm]
 * @param bore  of the hole in the finished part [mm]
 * @returns undefined where the floor is too thin for a roof
 */
export function roofWords(
  roof: Roof,
  { floor, bore }: { readonly floor: number; readonly bore: number },
): string | undefined {
  if (!takesRoof(floor, roof)) return undefined;
  const layer = plain(roof.layer, 2);
  return roof.kind === 'membrane'
    ? `roofed as printed by a membrane ${layer}: drill through ⌀${plain(bore, 2)} after printing`
    : `roofed as printed in ${roofLayers(roof)} steps of ${layer} around ⌀${plain(bore, 2)}: nothing to drill`;
}
