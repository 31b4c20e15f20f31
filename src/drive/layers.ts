import { layerOnGrid, layerStops } from '../mechanics/layer-grid.js';
import { rounded } from '../units/format.js';
import type { LayerNumbers } from './numbers.js';

const LONGEST_PATTERN = 12;
/** Usual layer heights lie in this range, in hundredths of a millimetre. */
const [THINNEST, THICKEST] = [8, 32];
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
 * Usual layer heights that are whole full steps: the round ones (two decimals) where there are three or more,
 * else the plain multiples of the step, thinned to twelve.
 *
 * @param fullStep  travel of one full step [mm], > 0
 * @returns heights from 0.08 to 0.32 mm, ascending
 * @example gridHeights(0.04) // [0.08, 0.12, 0.16, 0.2, 0.24, 0.28, 0.32]
 */
export function gridHeights(fullStep: number): readonly number[] {
  const hundredths = Array.from({ length: THICKEST - THINNEST + 1 }, (_, index) => (THINNEST + index) / 100);
  const round = hundredths.filter((height) => layerOnGrid({ height, fullStep }).onGrid);
  return thinned(round.length >= 3 ? round : multiples(fullStep));
}

function multiples(fullStep: number): readonly number[] {
  const first = Math.ceil(THINNEST / 100 / fullStep);
  const last = Math.floor(THICKEST / 100 / fullStep);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => rounded((first + index) * fullStep, 9));
}

function thinned(heights: readonly number[]): readonly number[] {
  const every = Math.ceil(heights.length / LONGEST_LIST);
  return heights.filter((_, index) => index % every === 0);
}
