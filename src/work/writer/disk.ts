import * as fs from 'node:fs';
import { hostname } from 'node:os';

/** A process, told apart from a later one of the same number. */
export interface Owner {
  readonly pid: number;
  readonly host: string;
  /** when it began, as the system counts; empty where it does not tell */
  readonly started: string;
}

/**
 * Every call by which this program changes a disk, and what it asks before it does. Nothing else under `work` may change a
 * file, so that tests can end or fail a run at each of these calls in turn.
 */
export const disk = {
  mkdir: (path: string): void => fs.mkdirSync(path),
  /** a file that must not be there yet; a link that lies in wait is not followed */
  create: (path: string): number => fs.openSync(path, 'wx'),
  /** the same, to be read as well */
  createRows: (path: string): number => fs.openSync(path, 'wx+'),
  readAt: (handle: number, into: Uint8Array, at: number): number => fs.readSync(handle, into, 0, into.length, at),
  openFolder: (path: string): number => fs.openSync(path, 'r'),
  write: (handle: number, bytes: Uint8Array, from: number): number => fs.writeSync(handle, bytes, from),
  sync: (handle: number): void => fs.fsyncSync(handle),
  close: (handle: number): void => fs.closeSync(handle),
  rename: (from: string, to: string): void => fs.renameSync(from, to),
  link: (from: string, to: string): void => fs.linkSync(from, to),
  symlink: (target: string, path: string): void => fs.symlinkSync(target, path),
  /** a copy that must not be there yet */
  copy: (from: string, to: string): void => fs.copyFileSync(from, to, fs.constants.COPYFILE_EXCL),
  unlink: (path: string): void => fs.unlinkSync(path),
  rmdir: (path: string): void => fs.rmdirSync(path),
  chmod: (path: string, mode: number): void => fs.chmodSync(path, mode),
  touch: (path: string, seconds: number): void => fs.utimesSync(path, seconds, seconds),
  about: (path: string): fs.BigIntStats | undefined => fs.lstatSync(path, { bigint: true, throwIfNoEntry: false }),
  names: (path: string): fs.Dirent[] => fs.readdirSync(path, { withFileTypes: true }),
  read: (path: string): Buffer => fs.readFileSync(path),
  real: (path: string): string => fs.realpathSync(path),
  target: (path: string): string => fs.readlinkSync(path),
  /** the folder that this process was started in */
  here: (): string => fs.realpathSync('.'),
  self: (): Owner => ({ pid: process.pid, host: hostname(), started: startOf(process.pid) }),
  /** whether a process may still be at work; one of another computer always may */
  lives: ({ pid, host, started }: Owner): boolean => {
    if (host !== hostname()) return true;
    try {
      process.kill(pid, 0);
    } catch (error) {
      if (codeOf(error) === 'ESRCH') return false;
    }
    const now = startOf(pid);
    return started === '' || now === '' || now === started;
  },
};

/** The code of a disk's error, such as `ENOENT`; empty for any other. */
export function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}

/** When a process began, in ticks since the computer did: field 22 of its line, counted after its name in brackets. */
function startOf(pid: number): string {
  try {
    const line = fs.readFileSync(`/proc/${pid}/stat`, 'latin1');
    return line.slice(line.lastIndexOf(')') + 2).split(' ')[19] ?? '';
  } catch {
    return '';
  }
}
