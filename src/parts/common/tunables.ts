import type { FigureTunable, WordTunable } from '../../judge/advice.js';
import { BRIDGINGS } from '../../presets/printer.js';
import type { Float } from './float.js';

/** The nozzle, in the range in which one is made for such parts  [mm]. */
export const NOZZLE_TUNABLE: FigureTunable<{ readonly printer: { readonly nozzle: number } }> = {
  unit: 'mm',
  path: 'printer.nozzle',
  least: 0.15,
  most: 0.8,
  step: 0.05,
  grain: 0.2,
  now: ({ printer }) => printer.nozzle,
};

/** The layer; which ones there are hangs on the nozzle  [mm]. */
export const LAYER_TUNABLE: FigureTunable<{ readonly printer: { readonly layer: number } }> = {
  unit: 'mm',
  path: 'printer.layer',
  least: 0.04,
  most: 0.4,
  step: 0.01,
  grain: 0.04,
  now: ({ printer }) => printer.layer,
};

/** How pockets that open on the bed are made to print without support. */
export const BRIDGING_TUNABLE: WordTunable<{ readonly printer: { readonly bridging: string } }> = {
  path: 'printer.bridging',
  words: BRIDGINGS,
  now: ({ printer }) => printer.bridging,
};

/** The room in a bore that holds a shaft, by the section that gives it  [mm]. */
export function boreClearanceTunable<Design>(
  section: string,
  now: (design: Design) => number | undefined,
): FigureTunable<Design> {
  return { unit: 'mm', path: `${section}.bore_clearance`, least: -0.1, most: 0.5, step: 0.01, grain: 0.05, now };
}

/** How far a nut floats, and on what  [mm]. */
export function floatTunables<Design>(of: (design: Design) => Float | undefined): FigureTunable<Design>[] {
  const mm = { unit: 'mm', grain: 0.1 } as const;
  return [
    { ...mm, path: 'float.sideways', least: 0.05, most: 1, step: 0.05, now: (design) => of(design)?.sideways },
    { ...mm, path: 'float.along', least: 0.01, most: 0.5, step: 0.01, now: (design) => of(design)?.along.likely },
    { ...mm, path: 'float.sleeve', least: 2, most: 20, step: 0.1, grain: 0.5, now: (design) => sleeveOf(of(design)) },
  ];
}

function sleeveOf(float: Float | undefined): number | undefined {
  return float?.spacer === 'sleeve' ? float.pin : undefined;
}
