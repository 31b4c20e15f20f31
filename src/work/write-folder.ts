import * as disk from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { fault } from '../units/faults.js';
import { diskReason } from './disk-reason.js';

/** A file to be written, by its name inside the folder. */
export interface NamedBytes {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The disk calls that a write needs; tests put failing ones in their place. */
export type Disk = Pick<typeof disk, 'mkdir' | 'open' | 'rename' | 'link' | 'copyFile' | 'rm' | 'rmdir' | 'lstat'>;

/** What has been changed so far, and how to take it back. */
interface Undo {
  readonly steps: (() => Promise<unknown>)[];
}

/**
 * Writes files into a folder all or none: every byte lies synced under a temporary name before the first rename, and
 * on any failure the folder (made if need be) is as it was.
 *
 * @param folder where the files go
 * @param files names without folders, and their bytes
 * @param stale files of an earlier write that go away with this one
 * @throws InputError one line: the folder cannot be written, something is in the way, the disk is full
 */
export async function writeFolder(
  folder: string,
  files: readonly NamedBytes[],
  stale: readonly string[] = [],
  fs: Disk = disk,
): Promise<void> {
  const undo: Undo = { steps: [] };
  const backups: string[] = [];
  try {
    await makeFolder(folder, undo, fs);
    await refuseFoldersInTheWay(folder, files, fs);
    for (const file of files) await writeTemporary(join(folder, temporary(file.name)), file.bytes, undo, fs);
    for (const name of [...files.map((file) => file.name), ...stale]) await keepOld(folder, name, backups, undo, fs);
    for (const { name } of files) await putInPlace(folder, name, backups, undo, fs);
    for (const name of stale) await takeAway(folder, name, backups, undo, fs);
  } catch (error) {
    for (const step of undo.steps.reverse()) await step().catch(() => undefined);
    throw fault(folder, '', diskReason(error));
  }
  for (const backup of backups) await fs.rm(join(folder, backup), { force: true }).catch(() => undefined);
}

/** Makes a folder and those above it. (The recursive call of the library never returns where a parent takes no folders.) */
async function makeFolder(folder: string, undo: Undo, fs: Disk): Promise<void> {
  const failure = await fs.mkdir(folder).then(
    () => undefined,
    (error: NodeJS.ErrnoException) => error,
  );
  if (failure === undefined) undo.steps.push(() => fs.rmdir(folder));
  else if (failure.code === 'ENOENT' && (await isMissing(dirname(folder), fs))) {
    await makeFolder(dirname(folder), undo, fs);
    await makeFolder(folder, undo, fs);
  } else if (failure.code !== 'EEXIST') throw failure;
}

async function isMissing(path: string, fs: Disk): Promise<boolean> {
  return path !== dirname(path) && (await fs.lstat(path).catch(() => undefined)) === undefined;
}

async function refuseFoldersInTheWay(folder: string, files: readonly NamedBytes[], fs: Disk): Promise<void> {
  for (const { name } of files) {
    if (name !== basename(name)) throw new Error(`${name} is not a plain file name`);
    const there = await fs.lstat(join(folder, name)).catch(() => undefined);
    if (there?.isDirectory()) throw fault(name, '', 'a folder of that name is in the way');
  }
}

async function writeTemporary(path: string, bytes: Uint8Array, undo: Undo, fs: Disk): Promise<void> {
  undo.steps.push(() => fs.rm(path, { force: true }));
  const handle = await fs.open(path, 'w');
  try {
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Keeps the old file under a second name until all is done. */
async function keepOld(folder: string, name: string, backups: string[], undo: Undo, fs: Disk): Promise<void> {
  const old = join(folder, name);
  if ((await fs.lstat(old).catch(() => undefined)) === undefined) return;
  const backup = join(folder, backupOf(name));
  undo.steps.push(() => fs.rm(backup, { force: true }));
  await fs.rm(backup, { force: true });
  await fs.link(old, backup).catch(() => fs.copyFile(old, backup));
  backups.push(backupOf(name));
}

async function putInPlace(
  folder: string,
  name: string,
  backups: readonly string[],
  undo: Undo,
  fs: Disk,
): Promise<void> {
  await fs.rename(join(folder, temporary(name)), join(folder, name));
  undo.steps.push(() => restore(folder, name, backups, fs));
}

async function takeAway(folder: string, name: string, backups: readonly string[], undo: Undo, fs: Disk): Promise<void> {
  await fs.rm(join(folder, name), { force: true });
  undo.steps.push(() => restore(folder, name, backups, fs));
}

function restore(folder: string, name: string, backups: readonly string[], fs: Disk): Promise<unknown> {
  const path = join(folder, name);
  return backups.includes(backupOf(name))
    ? fs.rename(join(folder, backupOf(name)), path)
    : fs.rm(path, { force: true });
}

function temporary(name: string): string {
  return `.${name}.${process.pid}.new`;
}

function backupOf(name: string): string {
  return `.${name}.${process.pid}.old`;
}
