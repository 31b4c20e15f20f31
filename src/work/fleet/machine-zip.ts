import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { csvText } from '../../fleet/csv/write-csv.js';
import type { FinishedPart } from '../../fleet/finished-part.js';
import { partFolder, placements } from '../../fleet/names.js';
import { type HandedPart, startPage } from '../../fleet/start-page.js';
import { hardwareOf, hardwareTable } from '../../fleet/totals.js';
import { withScriptInside } from '../../output/page/page-shell.js';
import { sha256Base64 } from './digest.js';
import { PAGE } from './make-entry.js';

/** Zip times have no zone; a fixed local one reads the same everywhere. */
const FIXED_TIME = '1980-01-01T00:00:00';
const LEVEL = 2;

/** What of a part's folder is handed over, and what it is called. */
const READ: readonly (readonly [name: RegExp, what: string])[] = [
  [/^report\.html$/, 'page and workshop card'],
  [/^drawing(?:-\d+)?\.svg$/, 'drawing'],
  [/^report\.json$/, 'report'],
];

/**
 * The zip of a machine, which opens without this program: solids under `print/`, page, drawing and report of each part
 * under `parts/ROLE/`, the hardware list, and a page to start from.
 * @param fleet the fleet's name
 * @param parts those of the machine that have files
 * @param out the folder in which they are placed
 */
export async function machineZip(
  fleet: string,
  machine: string,
  parts: readonly FinishedPart[],
  out: string,
): Promise<Uint8Array> {
  return zipSync(await filesOf(fleet, machine, parts, out), { level: LEVEL, mtime: FIXED_TIME });
}

async function filesOf(
  fleet: string,
  machine: string,
  parts: readonly FinishedPart[],
  out: string,
): Promise<Record<string, Uint8Array>> {
  const files: Record<string, Uint8Array> = {};
  const handed: HandedPart[] = [];
  for (const { role, quantity, spare, made } of parts) {
    const links: { path: string; what: string }[] = [];
    const add = (path: string, what: string, bytes: Uint8Array) => {
      files[path] = bytes;
      links.push({ path, what });
    };
    const read = (path: string) => new Uint8Array(readFileSync(join(out, path)));
    for (const { from, to } of placements(made, machine, role)) {
      const name = to.split('/').at(-1)!;
      add(`print/${name}`, name, read(from));
    }
    for (const [pattern, what] of READ)
      for (const { name } of made.files.filter((file) => pattern.test(file.name))) {
        const bytes = read(`${partFolder(made)}/${name}`);
        add(`parts/${role}/${name}`, what, name === 'report.html' ? await alone(bytes) : bytes);
      }
    const { name, verdict, reasons } = made;
    handed.push({ role, name, verdict, reasons, pieces: quantity + spare, links });
  }
  const hardware = hardwareOf(parts.map(({ made, quantity, spare }) => ({ made, quantity: quantity + spare })));
  const page = startPage(machine, fleet, handed, hardware, sha256Base64);
  const table = csvText(hardwareTable(hardware, []));
  return { 'start.html': Buffer.from(page), 'hardware.csv': Buffer.from(table), ...files };
}

/** A page with the script inside that it shares with others in the output folder. */
async function alone(bytes: Uint8Array): Promise<Uint8Array> {
  return Buffer.from(await withScriptInside(Buffer.from(bytes).toString('utf8'), PAGE.pageScript.src));
}
