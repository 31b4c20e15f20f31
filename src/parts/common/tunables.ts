import type { Tunable } from '../../judge/advice.js';

/** The nozzle, in the range in which one is made for such parts  [mm]. */
export const NOZZLE_TUNABLE: Tunable<{ readonly printer: { readonly nozzle: number } }> = {
  unit: 'mm',
  path: 'printer.nozzle',
  least: 0.15,
  most: 0.8,
  step: 0.05,
  grain: 0.2,
  now: ({ printer }) => printer.nozzle,
};

/** The layer; which ones there are hangs on the nozzle  [mm]. */
export const LAYER_TUNABLE: Tunable<{ readonly printer: { readonly layer: number } }> = {
  unit: 'mm',
  path: 'printer.layer',
  least: 0.04,
  most: 0.4,
  step: 0.01,
  grain: 0.04,
  now: ({ printer }) => printer.layer,
};

/** The room in a bore that holds a shaft, by the section that gives it  [mm]. */
export function boreClearanceTunable<Design>(
  section: string,
  now: (design: Design) => number | undefined,
): Tunable<Design> {
  return { unit: 'mm', path: `${section}.bore_clearance`, least: -0.1, most: 0.5, step: 0.01, grain: 0.05, now };
}
