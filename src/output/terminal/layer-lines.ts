import type { DriveNumbers, LayerNumbers } from '../../drive/numbers.js';
import { plain } from '../../units/format.js';
import { beside } from './layout.js';

/** An unevenness below this is not seen on a print [mm]. */
const UNSEEN = 0.005;
/** Layers told one by one. */
const MOST_TOLD = 6;

/** For each layer height off the grid: how far each layer is off, after how many it repeats, and what to use. */
export function patternLines(screws: readonly DriveNumbers[], width: number): string[] {
  const off = screws.flatMap(({ designation, layers }) =>
    layers
      .filter(({ on_grid }) => !on_grid)
      .map((layer) => ({ name: `  ${designation}, ${plain(layer.height)}`, layer })),
  );
  const column = Math.max(...off.map(({ name }) => name.length)) + 3;
  return off.flatMap(({ name, layer }) => beside(name, column, patternText(layer), width));
}

function patternText({ pattern, repeats_after, worst_off, nearest }: LayerNumbers): string {
  const told = pattern.slice(0, MOST_TOLD).map(({ off }) => signed(off));
  const more = repeats_after > MOST_TOLD ? ' …' : '';
  const advice =
    worst_off <= UNSEEN ? 'too little to see' : `take ${nearest.map((height) => plain(height, 4)).join(' or ')}`;
  return `${told.join(' ')}${more}, every ${repeats_after} layers; ${advice}`;
}

function signed(value: number): string {
  const text = plain(Math.abs(value), 4);
  if (text === '0') return text;
  return `${value < 0 ? '−' : '+'}${text}`;
}

/** Usable layer heights of each screw. */
export function gridLines(screws: readonly DriveNumbers[], width: number): string[] {
  const column = Math.max(...screws.map(({ designation }) => designation.length)) + 5;
  return screws.flatMap(({ designation, grid_heights }) =>
    beside(`  ${designation}`, column, grid_heights.map((height) => plain(height, 4)).join(', '), width),
  );
}
