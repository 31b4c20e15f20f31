import { join } from 'node:path';
import { removeAll, tryTo } from './basics.js';
import { disk } from './disk.js';

/** A process of another computer cannot be asked whether it lives; after a day it is taken for dead. */
const OLD = 24 * 3600 * 1000;
const TEMPORARY = /^\.new-(\d+)-[0-9a-f]+$/;

/** Removes folders that killed runs began to add to a store, in the store's folder and in those below it. */
export function clearLeftovers(folder: string, depth: number): void {
  tryTo(() => {
    for (const entry of disk.names(folder)) {
      const path = join(folder, entry.name);
      const owner = TEMPORARY.exec(entry.name)?.[1];
      if (owner !== undefined) {
        if (isDead(Number(owner)) || isOld(path)) tryTo(() => removeAll(path));
      } else if (depth > 0 && entry.isDirectory()) clearLeftovers(path, depth - 1);
    }
  });
}

function isDead(pid: number): boolean {
  return !disk.lives({ ...disk.self(), pid, started: '' });
}

function isOld(path: string): boolean {
  const about = disk.about(path);
  return about !== undefined && Date.now() - Number(about.mtimeMs) > OLD;
}
