import { randomBytes } from 'node:crypto';
import {
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
  if (isSameFile(from, to)) return false;
  before();
  mkdirSync(dirname(to), { recursive: true });
  putInPlace(to, (temporary) => {
    try {
      linkSync(from, temporary);
    } catch (error) {
      if (!isLinkTrouble(error)) throw error;
      copyFileSync(from, temporary);
      const handle = openSync(temporary, 'r+');
      fsyncSync(handle);
      closeSync(handle);
    }
  });
  return true;
}

/** Whether two names are of one file. */
function isSameFile(a: string, b: string): boolean {
  const [first, second] = [a, b].map((path) => statSync(path, { bigint: true, throwIfNoEntry: false }));
  return first !== undefined && second !== undefined && first.ino === second.ino && first.dev === second.dev;
}

function isLinkTrouble(error: unknown): boolean {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  return code === 'EXDEV' || code === 'EPERM' || code === 'EMLINK' || code === 'ENOTSUP' || code === 'ENOSYS';
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
