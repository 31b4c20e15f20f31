import type { FileRow, MachineRows, ManifestRow } from './manifest.js';
import type { StoredManifest } from './stored-manifest.js';

/** What a run of some machines takes over of the others. */
export interface Carried {
  /** what was said of a machine; none where it was run, or not known */
  readonly rowsOf: (machine: string) => MachineRows | undefined;
  /** the files that these machines have */
  readonly files: readonly FileRow[];
}

/**
 * Takes over from the earlier manifest what a run of some machines does not touch. Machines that it does not know stay
 * listed as not made.
 *
 * @param left names of the machines that are not run
 * @param earlier what stood in the folder
 */
export function carryOver(left: ReadonlySet<string>, earlier: StoredManifest | undefined): Carried {
  const machines = (earlier?.machines ?? []).filter(({ machine }) => left.has(machine));
  const kept = new Map(machines.map((machine) => [machine.machine, { machine, parts: [] as ManifestRow[] }]));
  for (const row of earlier?.parts ?? []) kept.get(row.machine)?.parts.push(row);
  const folders = new Set([...kept.values()].flatMap(({ parts }) => parts.flatMap(({ folder }) => folder ?? [])));
  const files = (earlier?.files ?? []).filter(({ file }) => {
    const [top, name = ''] = file.split('/');
    if (top === 'machines') return kept.has(name);
    if (top === 'zips') return kept.has(name.replace(/\.zip$/, ''));
    return top === 'parts' && folders.has(`parts/${name}`);
  });
  return { rowsOf: (machine) => kept.get(machine), files };
}
