import type { Colour } from './raster.js';

/** Colours of bodies in their order: celadon, ochre, slate blue, heather, sage. */
export const BODY_COLOURS: readonly Colour[] = [
  [132, 176, 164],
  [214, 170, 92],
  [124, 146, 184],
  [176, 140, 168],
  [160, 168, 120],
];

/** Faces opened by the section plane, in the same order. */
export const CUT_COLOURS: readonly Colour[] = [
  [226, 216, 194],
  [240, 222, 184],
  [214, 220, 232],
  [230, 214, 226],
  [224, 226, 200],
];

/** Screws and shafts. */
export const COMPANION_COLOUR: Colour = [158, 164, 172];
export const COMPANION_CUT: Colour = [216, 218, 222];
/** How much of what lies behind a companion it hides. */
export const COMPANION_OPACITY = 0.55;

/** The colour of a body by its place. */
export function bodyColour(index: number, colours: readonly Colour[] = BODY_COLOURS): Colour {
  return colours[index % colours.length]!;
}
