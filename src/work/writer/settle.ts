import { dirname, join } from 'node:path';
import { removeAll, tryTo } from './basics.js';
import { beside, ownerOf } from './beside.js';
import { codeOf, disk } from './disk.js';
import { tryLock } from './lock.js';

/**
 * Puts right what a run that was ended left beside a file or folder, whose lock is held: a folder that was being replaced
 * comes back, or what is left of the one before it goes; what was only begun is cleared.
 */
export function settle(path: string): void {
  const left = leftBeside(dirname(path)).filter(({ of }) => join(dirname(path), of) === path);
  for (const { digits, sort } of left) if (sort === 'old' && digits !== undefined) finishSwap(path, digits);
  for (const { digits, sort } of left)
    if (sort !== 'old' && sort !== undefined && digits !== undefined) removeAll(beside(path, sort, digits));
}

/** Puts right all that ended runs left in a folder; what another run is at work on is left to it. */
export function settleAll(folder: string): void {
  const left = new Set(leftBeside(folder).map(({ of }) => of));
  for (const of of left) {
    tryTo(() => {
      const path = join(folder, of);
      const lock = tryLock(path);
      if (!lock) return;
      try {
        settle(path);
      } finally {
        lock.release();
      }
    });
  }
}

function leftBeside(folder: string) {
  try {
    return disk.names(folder).flatMap(({ name }) => ownerOf(name) ?? []);
  } catch (error) {
    if (['ENOENT', 'ENOTDIR', 'EACCES'].includes(codeOf(error))) return [];
    throw error;
  }
}

/**
 * Ends the replacing of a folder: where the new one is not in place the old one comes back, else what is left of the old one
 * goes. Files that are not ours and came after the look at the old folder go over into the new one.
 */
export function finishSwap(path: string, digits: string): void {
  const old = beside(path, 'old', digits);
  const isPlaced = disk.about(beside(path, 'new', digits)) === undefined;
  if (disk.about(path) === undefined) disk.rename(old, path);
  // a folder that somebody made in the meantime takes all that the old one held
  else sweep(old, path, '', new Set(isPlaced ? linesOf(beside(path, 'list', digits)) : []));
  removeAll(beside(path, 'list', digits));
}

/** Empties what is left of an old folder: `ours` goes, all else is in the new folder or goes over to it. */
function sweep(old: string, to: string, below: string, ours: ReadonlySet<string>): void {
  for (const entry of disk.names(join(old, below))) {
    const file = below === '' ? entry.name : `${below}/${entry.name}`;
    if (entry.isDirectory() && disk.about(join(to, file))?.isDirectory()) sweep(old, to, file, ours);
    else if (entry.isDirectory() && holdsOnly(old, file, ours)) removeAll(join(old, file));
    else if (ours.has(file) || isSame(join(old, file), join(to, file))) disk.unlink(join(old, file));
    else disk.rename(join(old, file), join(to, file));
  }
  disk.rmdir(join(old, below));
}

function holdsOnly(old: string, below: string, ours: ReadonlySet<string>): boolean {
  return disk.names(join(old, below)).every((entry) => {
    const file = `${below}/${entry.name}`;
    return entry.isDirectory() ? holdsOnly(old, file, ours) : ours.has(file);
  });
}

function isSame(a: string, b: string): boolean {
  const [first, second] = [disk.about(a), disk.about(b)];
  return first !== undefined && first.ino === second?.ino && first.dev === second.dev;
}

function linesOf(path: string): string[] {
  try {
    return disk.read(path).toString('utf8').split('\n');
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return [];
    throw error;
  }
}
