import { jsonPieces } from '../output/report-json.js';
import type { MachineRows } from './manifest-rows.js';
import type { PlateRow } from './plates.js';
import type { Sums } from './tally.js';

export type { MachineRow, MachineRows, ManifestRow, Standing } from './manifest-rows.js';

/** A file of the output folder. */
export interface FileRow {
  readonly file: string;
  readonly digest: string;
}

/** What a manifest says, its lists aside. */
export interface ManifestHead extends Sums {
  readonly fleet: string;
  readonly formats: readonly string[];
  readonly plates: readonly PlateRow[];
}

/** What a fleet run leaves. Its rows are gone through again and again, and need not all be in memory. */
export interface Manifest extends ManifestHead {
  readonly rows: Iterable<MachineRows>;
}

/**
 * manifest.json, piece by piece.
 * @param manifest the run
 * @param files every file in the folder but the manifest itself
 * @param more what is said besides
 */
export function manifestPieces(
  { fleet, formats, verdict, counts, hardware, filament, plates, rows }: Manifest,
  files: Iterable<FileRow>,
  more: Readonly<Record<string, unknown>> = {},
): Iterable<string> {
  const lists = { machines: machinesIn(rows), parts: partsIn(rows) };
  return jsonPieces({
    leadwright: 1,
    fleet,
    verdict,
    formats,
    counts,
    ...lists,
    hardware,
    filament,
    plates,
    files,
    ...more,
  });
}

/** The rows of all machines. */
export function* machinesIn(rows: Iterable<MachineRows>) {
  for (const { machine } of rows) yield machine;
}

/** The rows of all files, machine by machine. */
export function* partsIn(rows: Iterable<MachineRows>) {
  for (const { parts } of rows) yield* parts;
}
