import { rounded } from '../units/format.js';
import { requirePositive } from '../units/require.js';

/** Share of a full step within which a height counts as whole. */
const ON_GRID = 0.01;

/** A layer height against the grid of whole full steps. */
export interface GridHeight {
  /** the height asked for [mm] */
  readonly height: number;
  /** full steps a layer [-] */
  readonly fullSteps: number;
  /** true within 1 % of a step of a whole number, at least one */
  readonly onGrid: boolean;
  /** usable heights nearest to it, ascending: one when it is on the grid or below one step, else below and above [mm] */
  readonly nearest: readonly number[];
  /** layers after which the pattern of errors repeats, within 1 % of a step; 1 when on the grid, 100 at most */
  readonly repeatsAfter: number;
  /** the largest distance of a layer's top from the nearest full step [mm] */
  readonly worstOff: number;
}

/** Where one layer of a print ends. */
export interface LayerStop {
  /** layer number, from 1 */
  readonly layer: number;
  /** position within the full step at which the motor must stop, 0 up to 1 [-] */
  readonly phase: number;
  /** how far the wanted height lies above (+) or below (−) the nearest full step [mm]; half a step counts as − */
  readonly off: number;
  /** thickness of this layer if the motor settles on the nearest full step [mm] */
  readonly thickness: number;
}

/**
 * A layer height against the grid of whole full steps, on which a motor stops most repeatably.
 *
 *     full steps a layer = h / s
 *
 * @param p.height    h  layer height                [mm]  > 0
 * @param p.fullStep  s  travel of one full step     [mm]  > 0
 * @returns whether it is on the grid (within 1 % of a step), the nearest heights that are, and how its error repeats
 * @throws InputError  a value is not above 0
 * @validity advice: a well-set driver holds microsteps well enough for many prints
 * @source common-practice: layer heights on full steps
 * @example layerOnGrid({ height: 0.15, fullStep: 0.04 }).nearest // [0.12, 0.16]
 */
export function layerOnGrid(p: { readonly height: number; readonly fullStep: number }): GridHeight {
  requirePositive('height', p.height);
  requirePositive('fullStep', p.fullStep);
  const fullSteps = tidy(p.height / p.fullStep);
  const whole = Math.round(fullSteps);
  const onGrid = whole >= 1 && isWhole(fullSteps);
  const steps = onGrid ? [whole] : [Math.floor(fullSteps), Math.ceil(fullSteps)].filter((n) => n >= 1);
  const repeatsAfter = repetition(fullSteps);
  const stops = layerStops({ ...p, layers: repeatsAfter });
  return {
    height: p.height,
    fullSteps,
    onGrid,
    nearest: steps.map((n) => tidy(n * p.fullStep)),
    repeatsAfter,
    worstOff: Math.max(...stops.map((stop) => Math.abs(stop.off))),
  };
}

/**
 * Where each of the first layers of a print ends, against the full steps.
 *
 *     x = n·h / s        phase = x − ⌊x⌋        off = (x − round x)·s
 *
 * @param p.height    h  layer height                [mm]  > 0
 * @param p.fullStep  s  travel of one full step     [mm]  > 0
 * @param p.layers       how many layers             [-]   whole, 1 or above
 * @returns one entry a layer, from layer 1
 * @throws InputError  a value is outside its range
 * @source common-practice: layer heights on full steps
 * @example layerStops({ height: 0.15, fullStep: 0.04, layers: 4 }).map((s) => s.phase) // [0.75, 0.5, 0.25, 0]
 */
export function layerStops(p: {
  readonly height: number;
  readonly fullStep: number;
  readonly layers: number;
}): readonly LayerStop[] {
  requirePositive('height', p.height);
  requirePositive('fullStep', p.fullStep);
  requirePositive('layers', p.layers);
  const at = (layer: number) => tidy((layer * p.height) / p.fullStep);
  return Array.from({ length: Math.floor(p.layers) }, (_, index) => {
    const steps = at(index + 1);
    const settled = Math.round(steps);
    return {
      layer: index + 1,
      phase: tidy(steps - Math.floor(steps)),
      off: tidy((steps - settled) * p.fullStep),
      thickness: tidy((settled - Math.round(at(index))) * p.fullStep),
    };
  });
}

/** Smallest number of layers that is a whole number of steps, within 1 % of one; by the pigeonhole rule 100 at most. */
function repetition(fullSteps: number): number {
  let layers = 1;
  while (layers < 1 / ON_GRID && !isWhole(layers * fullSteps)) layers += 1;
  return layers;
}

function isWhole(steps: number): boolean {
  return Math.abs(steps - Math.round(steps)) <= ON_GRID + 1e-9;
}

/** Drops what binary fractions add: 3 × 0.04 is 0.12. */
function tidy(value: number): number {
  return rounded(value, 9);
}
