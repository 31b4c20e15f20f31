import type { Comparison } from '../../drive/compare-screws.js';
import type { Duty } from '../../drive/duty.js';
import { comparedRows, tableLegend } from '../drive/compared-rows.js';
import { columns, wrapped } from './layout.js';
import type { Paint } from './paint.js';

const GAP = 2;

/** The figures of all screws, a column each; more screws than fit side by side stand below each other. */
export function driveTable(comparison: Comparison, duty: Duty, style: Paint, width: number): string[] {
  const rows = comparedRows(comparison, duty);
  const labels = ['', ...rows.map(({ label }) => `  ${label}`)];
  const cells = comparison.screws.map(({ designation }, place) => [
    designation,
    ...rows.map((row) => row.cells[place]!),
  ]);
  return [
    ...inBlocks(labels, cells, width).flatMap((block, i) => [
      ...(i === 0 ? [] : ['']),
      ...blockLines(labels, block, style),
    ]),
    ...tableLegend(comparison, rows)
      .flatMap((line) => wrapped(line, 2, width))
      .map(style.dim),
  ];
}

function blockLines(labels: readonly string[], block: readonly (readonly string[])[], style: Paint): string[] {
  const [head = '', ...lines] = columns(
    labels.map((label, i) => [label, ...block.map((column) => column[i]!)]),
    { gap: GAP },
  );
  return [style.bold(head), ...lines];
}

/** Columns that fit side by side, in their order. */
function inBlocks(
  labels: readonly string[],
  screws: readonly (readonly string[])[],
  most: number,
): readonly (readonly (readonly string[])[])[] {
  const widthOf = (column: readonly string[]) => Math.max(...column.map((cell) => cell.length));
  const blocks: (readonly string[])[][] = [[]];
  let width = widthOf(labels);
  for (const column of screws) {
    const wanted = GAP + widthOf(column);
    if (width + wanted > most && blocks.at(-1)!.length > 0) {
      blocks.push([]);
      width = widthOf(labels);
    }
    blocks.at(-1)!.push(column);
    width += wanted;
  }
  return blocks;
}
