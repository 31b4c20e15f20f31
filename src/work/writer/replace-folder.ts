import { dirname, join, sep } from 'node:path';
import { fault } from '../../units/faults.js';
import {
  type Content,
  createFile,
  makeFolders,
  removeAll,
  secondName,
  syncFolder,
  tryTo,
  withFolders,
} from './basics.js';
import { beside, randomDigits } from './beside.js';
import { codeOf, disk } from './disk.js';
import { finishSwap, settleAll } from './settle.js';
import { type Spool, type Spools, spoolsBeside } from './spool.js';
import { withLock } from './with-lock.js';

/** A folder as it will be. Files are named by their paths in it, with forward slashes. */
export interface Stage {
  /** where it is built */
  readonly path: string;
  readonly write: (file: string, content: Content) => void;
  /** gives a whole file that lies elsewhere a second name here */
  readonly link: (from: string, file: string) => void;
  /** takes a file over from the folder as it is; false where there is none */
  readonly keep: (file: string) => boolean;
  /** begins a list that may grow beyond memory; it is gone when the folder is filled */
  readonly spool: <T>() => Spool<T>;
}

/** What a folder becomes. */
export interface Replacement<T> {
  /** files that an earlier write of ours left, by their paths; they go unless they are written or kept. All others stay. */
  readonly earlier: (folder: string) => readonly string[] | Promise<readonly string[]>;
  /** writes all that is ours */
  readonly fill: (stage: Stage, folder: string) => T | Promise<T>;
}

/** After so many calls others get their turn. */
const BREATH = 500;

/**
 * Replaces a folder as one. The new folder is built and brought through to the disk beside the old one, files of others
 * included, and takes its place by two renames; after a crash between them the next command puts the old one back. On any
 * failure the folder, or its absence, is as it was.
 *
 * @throws InputError one line: the folder cannot be written, something is in the way, another run holds it
 */
export async function replaceFolder<T>(folder: string, replacement: Replacement<T>): Promise<T> {
  settleAll(dirname(folder));
  const path = resolved(folder);
  if (isAround(path, disk.here()))
    throw fault('', '', 'is the folder that you are in, and is replaced as a whole; give another');
  return withFolders(dirname(path), () => replaced(path, replacement));
}

async function replaced<T>(path: string, replacement: Replacement<T>): Promise<T> {
  return withLock(path, async (lock) => {
    const there = disk.about(path);
    if (there !== undefined && !there.isDirectory()) throw fault('', '', 'a file is in the way of a folder');
    const digits = randomDigits();
    const fresh = beside(path, 'new', digits);
    const ours = new Set<string>();
    const spools = spoolsBeside(path);
    try {
      const earlier = new Set(await replacement.earlier(path));
      disk.mkdir(fresh);
      const result = await replacement.fill(stageIn(fresh, path, ours, spools), path);
      spools.end();
      if (there !== undefined) {
        await carryOver(path, fresh, earlier, ours);
        disk.chmod(fresh, Number(there.mode & 0o7777n));
        createFile(beside(path, 'list', digits), listPieces(earlier, ours));
      }
      syncFolder(fresh);
      if (!lock.isHeld()) throw fault('', '', 'was taken over by another run; run again');
      swap(path, digits, there !== undefined);
      return result;
    } catch (error) {
      spools.end();
      tryTo(() => removeAll(fresh));
      tryTo(() => removeAll(beside(path, 'list', digits)));
      throw error;
    }
  });
}

function isAround(path: string, here: string): boolean {
  return here === path || here.startsWith(path.endsWith(sep) ? path : path + sep);
}

/** A link to a folder stays, and what it leads to is replaced. */
function resolved(folder: string): string {
  try {
    return disk.real(folder);
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes(codeOf(error))) return folder;
    throw error;
  }
}

function stageIn(fresh: string, path: string, ours: Set<string>, spools: Spools): Stage {
  const made = new Set<string>();
  const place = (file: string): string => {
    const to = join(fresh, file);
    const above = dirname(to);
    if (!made.has(above)) {
      makeFolders(above);
      made.add(above);
    }
    ours.add(file);
    return to;
  };
  return {
    path: fresh,
    write: (file, content) => createFile(place(file), content),
    link: (from, file) => secondName(from, place(file)),
    keep: (file) => {
      const from = join(path, file);
      if (disk.about(from)?.isFile() !== true) return false;
      secondName(from, place(file));
      return true;
    },
    spool: spools.begin,
  };
}

/** Gives everything in the old folder that is not ours a name in the new one. */
async function carryOver(
  from: string,
  to: string,
  earlier: ReadonlySet<string>,
  ours: ReadonlySet<string>,
): Promise<void> {
  let calls = 0;
  const walk = async (below: string): Promise<void> => {
    for (const entry of disk.names(join(from, below))) {
      if (++calls % BREATH === 0) await new Promise((resolve) => setImmediate(resolve));
      const file = below === '' ? entry.name : `${below}/${entry.name}`;
      if (entry.isDirectory()) {
        if (ours.has(file)) throw fault(file, '', 'a folder of that name is in the way');
        await walk(file);
        if (isEmpty(join(from, file))) makeFolders(join(to, file));
      } else if (!earlier.has(file) && !ours.has(file)) carry(join(from, file), join(to, file), entry);
    }
  };
  await walk('');
}

/** All names, each on a line. */
function* listPieces(earlier: ReadonlySet<string>, ours: ReadonlySet<string>): Iterable<string> {
  for (const file of earlier) yield `${file}\n`;
  for (const file of ours) if (!earlier.has(file)) yield `${file}\n`;
}

function isEmpty(folder: string): boolean {
  return disk.names(folder).length === 0;
}

function carry(from: string, to: string, entry: { isFile(): boolean; isSymbolicLink(): boolean }): void {
  if (!entry.isFile() && !entry.isSymbolicLink()) return; // pipes and sockets go over after the swap
  makeFolders(dirname(to));
  if (entry.isFile()) secondName(from, to);
  else disk.symlink(disk.target(from), to);
}

/** Two renames; where the second fails the first is taken back. What comes after them may fail without harm. */
function swap(path: string, digits: string, isThere: boolean): void {
  const [fresh, old] = [beside(path, 'new', digits), beside(path, 'old', digits)];
  if (isThere) disk.rename(path, old);
  try {
    disk.rename(fresh, path);
  } catch (error) {
    if (isThere) disk.rename(old, path);
    throw error;
  }
  tryTo(() => {
    syncFolder(dirname(path));
    if (isThere) finishSwap(path, digits);
  });
}
