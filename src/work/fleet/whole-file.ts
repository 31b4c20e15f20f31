import { randomBytes } from 'node:crypto';
import {
  type BigIntStats,
  closeSync,
  copyFileSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';

/** A name beside the file that no other run uses; dot files are ours to clear. */
export function temporaryBeside(path: string): string {
  return join(dirname(path), `.new-${process.pid}-${randomBytes(6).toString('hex')}`);
}

/** Writes a file so that under its name stands the old content or the whole new one, through a power cut too. */
export function writeWhole(path: string, content: string | Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  putInPlace(path, (temporary) => {
    const handle = openSync(temporary, 'wx');
    try {
      const bytes = typeof content === 'string' ? Buffer.from(content) : content;
      for (let done = 0; done < bytes.length; ) done += writeSync(handle, bytes, done);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  });
}

/**
 * Gives a whole file a second name, as a hard link where the disk knows them and as a copy elsewhere.
 * @param before called before anything changes
 * @returns whether anything changed
 */
export function linkWhole(from: string, to: string, before: () => void = () => undefined): boolean {
  const there = about(to);
  if (there !== undefined && isSameFile(there, about(from))) return false;
  before();
  mkdirSync(dirname(to), { recursive: true });
  if (there === undefined && isLinked(from, to)) return true;
  putInPlace(to, (temporary) => {
    if (!isLinked(from, temporary)) copyWhole(from, temporary);
  });
  return true;
}

function about(path: string): BigIntStats | undefined {
  return statSync(path, { bigint: true, throwIfNoEntry: false });
}

function isSameFile(a: BigIntStats, b: BigIntStats | undefined): boolean {
  return a.ino === b?.ino && a.dev === b.dev;
}

/** Gives a file a second name, in one step; false where the disk knows no such names, or where the name is taken. */
function isLinked(from: string, to: string): boolean {
  try {
    linkSync(from, to);
    return true;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (!['EXDEV', 'EPERM', 'EMLINK', 'ENOTSUP', 'ENOSYS', 'EEXIST'].includes(code)) throw error;
    return false;
  }
}

function copyWhole(from: string, to: string): void {
  copyFileSync(from, to);
  const handle = openSync(to, 'r+');
  fsyncSync(handle);
  closeSync(handle);
}

function putInPlace(path: string, fill: (temporary: string) => void): void {
  const temporary = temporaryBeside(path);
  try {
    fill(temporary);
    renameSync(temporary, path);
  } finally {
    // renaming one of two names of a file onto the other leaves both
    rmSync(temporary, { force: true });
  }
}
