import type { Sizes } from '../../parts/part-kind.js';
import { plain } from '../../units/format.js';
import { flatSizes } from '../flat-sizes.js';
import { inchSize } from '../inches.js';
import { columns, WIDTH, words } from './layout.js';

/** Sizes in use and in the file, side by side. */
export function sizeLines(
  { finished, printed }: { readonly finished: Sizes; readonly printed: Sizes },
  width = WIDTH,
  units?: 'inch',
): string[] {
  const inUse = new Map(flatSizes(finished));
  const inFile = new Map(flatSizes(printed));
  const names = [...new Set([...inUse.keys(), ...inFile.keys()])];
  const cell = (value: number | undefined) => (value === undefined ? '–' : value.toFixed(3));
  const rows = names.map((name) => [
    `  ${words(name)}`,
    cell(inUse.get(name)),
    cell(inFile.get(name)),
    change(inUse.get(name), inFile.get(name)),
    ...(units === 'inch' ? [inchSize(name, inUse.get(name)), inchSize(name, inFile.get(name))] : []),
  ]);
  const heads = ['  mm', 'finished', 'printed', 'change', ...(units === 'inch' ? ['finished, in', 'printed, in'] : [])];
  return columns([heads, ...rows], { right: [1, 2, 3, 4, 5], gap: 3, width });
}

function change(from: number | undefined, to: number | undefined): string {
  if (from === undefined || to === undefined) return '';
  const by = to - from;
  return Math.abs(by) < 0.0005 ? '·' : `${by > 0 ? '+' : '−'}${plain(Math.abs(by)).padEnd(1)}`;
}
