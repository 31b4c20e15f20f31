import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { type FleetRun, finishedParts } from '../../fleet/fleet-run.js';
import { FOLDERS, partFolder, placements } from '../../fleet/names.js';

/** Zip times have no zone; a fixed local one reads the same everywhere. */
const FIXED_TIME = '1980-01-01T00:00:00';
const LEVEL = 2;

/** Writes a zip a machine: its printable files, and the report of each part. */
export async function writeZips(
  run: FleetRun & { readonly out: string },
  write: (file: string, content: Uint8Array) => void,
): Promise<void> {
  const machines = new Map<string, [string, string][]>();
  for (const { machine, role, made } of finishedParts(run)) {
    const files = placements(made, machine, role).map(({ from, to }): [string, string] => [
      to.split('/').at(-1)!,
      from,
    ]);
    const report: [string, string] = [`${machine}.${role}.report.json`, `${partFolder(made)}/report.json`];
    machines.set(machine, [...(machines.get(machine) ?? []), ...files, report]);
  }
  for (const [machine, files] of machines) {
    const content = files.map(([name, from]) => [name, new Uint8Array(readFileSync(join(run.out, from)))] as const);
    write(`${FOLDERS.zips}/${machine}.zip`, zipSync(Object.fromEntries(content), { level: LEVEL, mtime: FIXED_TIME }));
    await new Promise((resolve) => setImmediate(resolve));
  }
}
