import { dirname, join } from 'node:path';
import { codeOf, disk } from './disk.js';

/** Codes of disks that know no second names of a file, or have no more of them. */
const NO_LINKS = ['EXDEV', 'EPERM', 'EMLINK', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS'];

/** What a file holds: whole, or piece by piece. */
export type Content = string | Uint8Array | Iterable<string>;

/** Writes a file that must not be there yet, through to the disk unless it is of no use after a power cut. */
export function createFile(path: string, content: Content, lasting = true): void {
  const handle = disk.create(path);
  try {
    for (const bytes of blocksOf(content)) writeAll(handle, bytes);
    if (lasting) disk.sync(handle);
  } finally {
    disk.close(handle);
  }
}

/** Writes all bytes where a file stands. */
export function writeAll(handle: number, bytes: Uint8Array): void {
  for (let done = 0; done < bytes.length; ) done += disk.write(handle, bytes, done);
}

/** Signs that are written in one go. */
const BLOCK = 1 << 18;

function* blocksOf(content: Content): Iterable<Uint8Array> {
  if (content instanceof Uint8Array) yield content;
  else if (typeof content === 'string') yield Buffer.from(content);
  else {
    let pieces: string[] = [];
    let length = 0;
    for (const piece of content) {
      pieces.push(piece);
      length += piece.length;
      if (length < BLOCK) continue;
      yield Buffer.from(pieces.join(''));
      pieces = [];
      length = 0;
    }
    if (length > 0) yield Buffer.from(pieces.join(''));
  }
}

/** Gives a file a second name, as a hard link where the disk knows them and as a copy elsewhere. */
export function secondName(from: string, to: string): void {
  try {
    disk.link(from, to);
  } catch (error) {
    if (!NO_LINKS.includes(codeOf(error))) throw error;
    disk.copy(from, to);
  }
}

/** Whether a disk that refuses a link knows none at all. */
export function knowsNoLinks(error: unknown): boolean {
  return NO_LINKS.includes(codeOf(error));
}

/**
 * Makes a folder and those above it. (The recursive call of the library never returns where a parent takes no folders.)
 * @returns the folders that were made, the outermost first
 */
export function makeFolders(path: string): string[] {
  try {
    disk.mkdir(path);
    return [path];
  } catch (error) {
    if (codeOf(error) === 'EEXIST' && isFolder(path)) return [];
    const above = dirname(path);
    if (codeOf(error) !== 'ENOENT' || above === path || disk.about(above) !== undefined) throw error;
    return [...makeFolders(above), ...makeFolders(path)];
  }
}

function isFolder(path: string): boolean {
  const about = disk.about(path);
  // what a link leads to is seen when it is entered
  return about === undefined || about.isDirectory() || about.isSymbolicLink();
}

/** Removes a file, or a folder with all that it holds; links are removed, never followed. */
export function removeAll(path: string): void {
  const about = disk.about(path);
  if (about === undefined) return;
  if (about.isDirectory()) {
    for (const { name } of disk.names(path)) removeAll(join(path, name));
    ignoring('ENOENT', () => disk.rmdir(path));
  } else ignoring('ENOENT', () => disk.unlink(path));
}

function ignoring(code: string, work: () => void): void {
  try {
    work();
  } catch (error) {
    if (codeOf(error) !== code) throw error;
  }
}

/** Makes the folders for some work; those that it made for nothing go again. */
export async function withFolders<T>(path: string, work: () => Promise<T>): Promise<T> {
  const made = makeFolders(path);
  try {
    return await work();
  } catch (error) {
    for (const folder of made.reverse()) tryTo(() => disk.rmdir(folder));
    throw error;
  }
}

/** Does what may fail without harm: the next command does it again. */
export function tryTo(work: () => void): void {
  try {
    work();
  } catch (error) {
    if (codeOf(error) === '') throw error;
  }
}

/** Brings the names in a folder through to the disk; where folders cannot be opened the system does so by itself. */
export function syncFolder(path: string): void {
  let handle: number;
  try {
    handle = disk.openFolder(path);
  } catch (error) {
    if (['EISDIR', 'EPERM', 'EACCES'].includes(codeOf(error))) return;
    throw error;
  }
  try {
    disk.sync(handle);
  } catch (error) {
    if (!['EINVAL', 'EPERM', 'ENOTSUP'].includes(codeOf(error))) throw error;
  } finally {
    disk.close(handle);
  }
}
