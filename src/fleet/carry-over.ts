import { type FileRow, type MachineRow, type ManifestRow, type PartsOfManifest, summed } from './manifest.js';
import type { StoredManifest } from './stored-manifest.js';

/** A manifest's parts with rows of machines that this run left alone, and the files that they have. */
export interface Carried {
  readonly manifest: PartsOfManifest;
  readonly files: readonly FileRow[];
}

/**
 * Takes over from the earlier manifest what a run of some machines did not touch. Machines that it does not know stay
 * listed as not made.
 *
 * @param now the run, with a row for every machine of the fleet
 * @param chosen names of the machines that were run
 * @param earlier what stood in the folder
 */
export function carryOver(
  now: PartsOfManifest,
  chosen: ReadonlySet<string>,
  earlier: StoredManifest | undefined,
): Carried {
  const known = new Map((earlier?.machines ?? []).map((row) => [row.machine, row]));
  const kept = new Set(
    now.machines.flatMap(({ machine }) => (!chosen.has(machine) && known.has(machine) ? [machine] : [])),
  );
  if (!earlier || kept.size === 0) return { manifest: now, files: [] };
  const machines = now.machines.map((row): MachineRow => (kept.has(row.machine) ? known.get(row.machine)! : row));
  const old = earlier.parts.filter(({ machine }) => kept.has(machine));
  const rows = { old: byMachine(old), now: byMachine(now.parts) };
  const parts = now.machines.flatMap(({ machine }) => rows[kept.has(machine) ? 'old' : 'now'].get(machine) ?? []);
  const folders = new Set(old.flatMap(({ folder }) => folder ?? []));
  const files = earlier.files.filter(({ file }) => {
    const [top, name = ''] = file.split('/');
    if (top === 'machines') return kept.has(name);
    if (top === 'zips') return kept.has(name.replace(/\.zip$/, ''));
    return top === 'parts' && folders.has(`parts/${name}`);
  });
  return { manifest: summed({ ...now, machines, parts }), files };
}

function byMachine(rows: readonly ManifestRow[]): Map<string, ManifestRow[]> {
  const groups = new Map<string, ManifestRow[]>();
  for (const row of rows) {
    const group = groups.get(row.machine);
    if (group) group.push(row);
    else groups.set(row.machine, [row]);
  }
  return groups;
}
