import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { fault } from '../units/faults.js';
import { replaceFile } from './writer/files.js';

/** The page lies beside the built command, or beside the folder of its pieces. */
const PLACES = ['live.html', '../live.html', '../../dist/live.html'];

/** Where the page holds the sheet that it opens on. */
const NO_SHEET = '<script type="application/json" id="sheet">""</script>';

/** How a page of ours begins; any other file of the name is left alone. */
const OURS = '<title>Leadwright</title>';

/**
 * Writes the page that holds the whole tool.
 *
 * @param to where; an earlier page of ours is replaced, any other file is not
 * @param sheet what it opens on; its first step where there is none
 * @param cwd where `to` counts from
 * @param page the page as it was built
 * @returns bytes written
 * @throws InputError there is another file of this name, or this install has no page
 */
export async function writeLivePage(
  to: string,
  sheet: string | undefined,
  cwd: string,
  page: string = livePage(),
): Promise<number> {
  const full = resolve(cwd, to);
  if (existsSync(full) && !isOurs(full)) throw fault('--to', to, 'is another file, and is not overwritten');
  const text = sheet === undefined ? page : page.replace(NO_SHEET, () => NO_SHEET.replace('""', () => asScript(sheet)));
  await replaceFile('--to', to, text, cwd);
  return Buffer.byteLength(text);
}

function livePage(): string {
  const here = dirname(fileURLToPath(import.meta.url));
  const found = PLACES.map((place) => join(here, place)).find((path) => existsSync(path));
  if (found === undefined) throw fault('', '', 'this copy holds no page: npm run live builds it');
  return readFileSync(found, 'utf8');
}

function isOurs(path: string): boolean {
  return readFileSync(path, 'utf8').slice(0, 4096).includes(OURS);
}

/** A text that cannot end the script it stands in. */
function asScript(text: string): string {
  return JSON.stringify(text).replaceAll('<', '\\u003c');
}
