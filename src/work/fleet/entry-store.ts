import { readdirSync, readFileSync, statSync } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { DigestedFile, RememberedPart } from '../../fleet/made-part.js';
import { jsonLine } from '../../output/report-json.js';
import { addFolder, discardFolder } from '../writer/add-folder.js';
import { disk } from '../writer/disk.js';
import { clearLeftovers } from '../writer/leftovers.js';
import { sha256, sha256Aside } from './digest.js';

/** A file of a part, by its name in the part's folder. */
export interface PartFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const RECORD = 'entry.json';
const ADDRESS = /^[0-9a-f]{64}$/;

/**
 * Made parts by their addresses, each a folder that appears whole or not at all. The folder may be deleted at any
 * time; what is read from it is checked, and what does not hold what it should counts as not there.
 */
export interface EntryStore {
  readonly folder: string;
}

/** Where the files of an entry lie. */
export function entryFolder({ folder }: EntryStore, address: string): string {
  return join(folder, address.slice(0, 2), address);
}

/**
 * A part as it was stored, its files checked by size and digest, beside one another and off this thread; undefined
 * where there is none or it is damaged.
 */
export async function readEntry(store: EntryStore, address: string): Promise<RememberedPart | undefined> {
  const folder = entryFolder(store, address);
  const made = readRecord(join(folder, RECORD), address);
  if (!made) return undefined;
  const whole = await Promise.all(made.files.map((file) => isWhole(folder, file)));
  if (whole.includes(false)) return undefined;
  touch(folder);
  return made;
}

/** A part that this run has just stored: its record alone, since its files were digested as they were written. */
export function readFreshEntry(store: EntryStore, address: string): RememberedPart | undefined {
  return readRecord(join(entryFolder(store, address), RECORD), address);
}

function readRecord(path: string, address: string): RememberedPart | undefined {
  try {
    if (!statSync(path).isFile()) return undefined;
    const text = readFileSync(path, 'utf8');
    const json = text.slice(65);
    if (text.slice(0, 64) !== sha256(json)) return undefined;
    // the digest vouches that this is what was written
    const made: RememberedPart = JSON.parse(json);
    return made.address === address ? made : undefined;
  } catch {
    return undefined;
  }
}

async function isWhole(folder: string, { name, size, digest }: DigestedFile): Promise<boolean> {
  try {
    const path = join(folder, name);
    const about = await stat(path);
    if (name !== basename(name) || !about.isFile() || about.size !== size) return false;
    const bytes = await readFile(path);
    return bytes.length === size && (await sha256Aside(bytes)) === digest;
  } catch {
    return false;
  }
}

/** What was used last is kept longest. */
function touch(folder: string): void {
  try {
    disk.touch(folder, Date.now() / 1000);
  } catch {
    // another run may have cleared it, or the disk is read-only: neither matters here
  }
}

/** Adds a part; where another run added it first, and it is sound, that one stays. */
export async function writeEntry(store: EntryStore, made: RememberedPart, files: readonly PartFile[]): Promise<void> {
  const folder = entryFolder(store, made.address);
  const json = jsonLine(made);
  const all = [
    ...files.map(({ name, bytes }) => ({ name, content: bytes })),
    { name: RECORD, content: `${sha256(json)}\n${json}` },
  ];
  if (addFolder(folder, all) || (await readEntry(store, made.address))) return;
  discardFolder(folder);
  // where another run was quicker, it has written the same bytes
  addFolder(folder, all);
}

/**
 * Keeps a store below a size: what was used longest ago goes first.
 * @param most bytes that may stay
 */
export function pruneEntries(store: EntryStore, most: number): void {
  clearLeftovers(store.folder, 1);
  const entries: { address: string; bytes: number; used: number }[] = [];
  for (const group of listed(store.folder)) {
    const below = join(store.folder, group);
    for (const name of listed(below)) {
      const path = join(below, name);
      const about = statSync(path, { throwIfNoEntry: false });
      if (about && ADDRESS.test(name)) entries.push({ address: name, bytes: sizeOf(path), used: about.mtimeMs });
    }
  }
  let bytes = entries.reduce((sum, entry) => sum + entry.bytes, 0);
  for (const entry of entries.sort((a, b) => a.used - b.used || (a.address < b.address ? -1 : 1))) {
    if (bytes <= most) break;
    discardFolder(entryFolder(store, entry.address));
    bytes -= entry.bytes;
  }
}

function sizeOf(folder: string): number {
  return listed(folder).reduce(
    (sum, name) => sum + (statSync(join(folder, name), { throwIfNoEntry: false })?.size ?? 0),
    0,
  );
}

function listed(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}
