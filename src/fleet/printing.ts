import { rounded } from '../units/format.js';
import type { Cell } from './csv/write-csv.js';
import type { ManifestRow } from './manifest.js';

/** A list that may lie elsewhere than in memory. */
export interface Pile<T> extends Iterable<T> {
  readonly push: (item: T) => unknown;
}

/** One file of a printing day. */
export type DayRow = Pick<ManifestRow, 'machine' | 'role' | 'file' | 'mass'> & { readonly pieces: number };

/** What is printed in one go: one material on one printer. */
export interface PrintingDay {
  readonly material: string;
  readonly printer: string;
  readonly pieces: number;
  /** g */
  readonly mass: number;
  readonly rows: Iterable<DayRow>;
}

/**
 * Puts the files for printers together by material and printer, machine by machine.
 * @param pile begins a list
 */
export function printingDays(pile: () => Pile<DayRow>) {
  const days = new Map<string, { pieces: number; mass: number; readonly rows: Pile<DayRow> }>();
  const add = (parts: readonly ManifestRow[]): void => {
    for (const { machine, role, file, mass, quantity, spare, material, printer } of parts) {
      if (file === null) continue;
      const key = JSON.stringify([material ?? '', printer ?? '']);
      const day = days.get(key) ?? { pieces: 0, mass: 0, rows: pile() };
      const pieces = quantity + spare;
      day.rows.push({ machine, role, file, mass, pieces });
      day.pieces += pieces;
      day.mass += pieces * (mass ?? 0);
      days.set(key, day);
    }
  };
  const sorted = (): PrintingDay[] =>
    [...days]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, day]) => {
        const [material, printer]: [string, string] = JSON.parse(key);
        return { material, printer, ...day };
      });
  return { add, days: sorted };
}

/** The same as a table, a row a file. */
export function* printingTable(days: readonly PrintingDay[]): Iterable<Cell[]> {
  yield ['material', 'printer', 'machine', 'role', 'file', 'pieces', 'mass_g'];
  for (const { material, printer, rows } of days)
    for (const { machine, role, file, pieces, mass } of rows)
      yield [material, printer, machine, role, file, pieces, mass === null ? null : rounded(mass * pieces, 3)];
}
