import { rounded } from '../units/format.js';
import type { Cell } from './csv/write-csv.js';
import type { ManifestRow } from './manifest.js';

type Column = readonly [name: string, cell: (row: ManifestRow) => Cell];

const COLUMNS: readonly Column[] = [
  ...(['machine', 'role', 'part', 'name', 'quantity', 'spare', 'verdict'] as const).map(plainly),
  ...(['file', 'digest', 'material', 'printer'] as const).map(plainly),
  ['mass_g', ({ mass }) => (mass === null ? null : rounded(mass, 3))],
  ...['x_mm', 'y_mm', 'z_mm'].map((name, axis): Column => [name, ({ bounds }) => sizeAlong(bounds, axis)]),
  ['reasons', ({ reasons }) => reasons.join(' | ')],
];

function plainly(name: keyof ManifestRow & ColumnOfText): Column {
  return [name, (row) => row[name]];
}

type ColumnOfText = { [Key in keyof ManifestRow]: ManifestRow[Key] extends Cell ? Key : never }[keyof ManifestRow];

function sizeAlong(bounds: ManifestRow['bounds'], axis: number): number | null {
  return bounds ? rounded(bounds[1][axis]! - bounds[0][axis]!, 3) : null;
}

/** The parts of a manifest as a table: a row a printable file; mass is of one, sizes are those around it. */
export function* manifestTable(parts: Iterable<ManifestRow>): Iterable<Cell[]> {
  yield COLUMNS.map(([name]) => name);
  for (const row of parts) yield COLUMNS.map(([, cell]) => cell(row));
}
