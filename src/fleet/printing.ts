import { rounded } from '../units/format.js';
import type { Cell } from './csv/write-csv.js';
import type { Manifest, ManifestRow } from './manifest.js';

/** What is printed in one go: one material on one printer. */
export interface PrintingDay {
  readonly material: string;
  readonly printer: string;
  readonly pieces: number;
  /** g */
  readonly mass: number;
  readonly rows: readonly ManifestRow[];
}

/** The files for printers, put together by material and printer. */
export function printingDays({ parts }: Pick<Manifest, 'parts'>): PrintingDay[] {
  const days = new Map<string, ManifestRow[]>();
  for (const row of parts) {
    if (row.file === null) continue;
    const key = JSON.stringify([row.material ?? '', row.printer ?? '']);
    const rows = days.get(key);
    if (rows) rows.push(row);
    else days.set(key, [row]);
  }
  const sorted = [...days].sort(([a], [b]) => (a < b ? -1 : 1));
  return sorted.map(([, rows]) => ({
    material: rows[0]?.material ?? '',
    printer: rows[0]?.printer ?? '',
    pieces: rows.reduce((sum, row) => sum + row.quantity + row.spare, 0),
    mass: rows.reduce((sum, row) => sum + (row.quantity + row.spare) * (row.mass ?? 0), 0),
    rows,
  }));
}

/** The same as a table, a row a file. */
export function printingTable(manifest: Pick<Manifest, 'parts'>): Cell[][] {
  const rows = printingDays(manifest).flatMap(({ material, printer, rows: files }) =>
    files.map(({ machine, role, file, quantity, spare, mass }): Cell[] => [
      material,
      printer,
      machine,
      role,
      file,
      quantity + spare,
      mass === null ? null : rounded(mass * (quantity + spare), 3),
    ]),
  );
  return [['material', 'printer', 'machine', 'role', 'file', 'pieces', 'mass_g'], ...rows];
}
