import { layerOnGrid, layerStops } from '../mechanics/layer-grid.js';
import { rounded } from '../units/format.js';
import type { LayerNumbers } from './numbers.js';

const LONGEST_PATTERN = 12;
/** Layer heights in common use [mm]. */
const USUAL_HEIGHTS = [0.08, 0.1, 0.12, 0.15, 0.16, 0.2, 0.24, 0.25, 0.28, 0.3, 0.32];
const [THINNEST, THICKEST] = [0.08, 0.32];
const LONGEST_LIST = 12;

/** One layer height against the grid, with one period of its errors. */
export function layerNumbers(height: number, fullStep: number): LayerNumbers {
  const grid = layerOnGrid({ height, fullStep });
  const layers = Math.min(grid.repeatsAfter, LONGEST_PATTERN);
  return {
    height,
    full_steps: rounded(grid.fullSteps),
    on_grid: grid.onGrid,
    nearest: grid.nearest,
    repeats_after: grid.repeatsAfter,
    worst_off: rounded(grid.worstOff),
    pattern: grid.onGrid
      ? []
      : layerStops({ height, fullStep, layers }).map((stop) => ({
          layer: stop.layer,
          phase: rounded(stop.phase),
          off: rounded(stop.off),
          thickness: rounded(stop.thickness),
        })),
  };
}

/**
 * Layer heights that are whole full steps: those in common use where there are three or more, else the plain
 * multiples of the step, thinned to twelve.
 *
 * @param fullStep  travel of one full step [mm], > 0
 * @returns heights from 0.08 to 0.32 mm, ascending
 * @source common-practice: layer heights on full steps
 * @example gridHeights(0.04) // [0.08, 0.12, 0.16, 0.2, 0.24, 0.28, 0.32]
 */
export function gridHeights(fullStep: number): readonly number[] {
  const usual = USUAL_HEIGHTS.filter((height) => layerOnGrid({ height, fullStep }).onGrid);
  return usual.length >= 3 ? usual : multiples(fullStep);
}

function multiples(fullStep: number): readonly number[] {
  const first = Math.ceil(THINNEST / fullStep - 1e-9);
  const last = Math.floor(THICKEST / fullStep + 1e-9);
  const every = Math.ceil((last - first + 1) / LONGEST_LIST);
  const heights: number[] = [];
  for (let steps = first; steps <= last; steps += every) heights.push(rounded(steps * fullStep, 9));
  return heights;
}
