import { readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** A process of another computer cannot be asked whether it lives; after a day it is taken for dead. */
const OLD = 24 * 3600 * 1000;
const TEMPORARY = /^\.new-(\d+)-[0-9a-f]+$/;

/** Removes temporary files that a killed run left in a folder and in those below it. */
export function clearLeftovers(folder: string, depth: number): void {
  let names: string[];
  try {
    names = readdirSync(folder);
  } catch {
    return;
  }
  for (const name of names) {
    const path = join(folder, name);
    const owner = TEMPORARY.exec(name)?.[1];
    if (owner !== undefined) {
      if (isDead(Number(owner)) || isOld(path)) rmSync(path, { recursive: true, force: true });
    } else if (depth > 0) clearLeftovers(path, depth - 1);
  }
}

function isDead(owner: number): boolean {
  try {
    process.kill(owner, 0);
    return false;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'ESRCH';
  }
}

function isOld(path: string): boolean {
  const about = statSync(path, { throwIfNoEntry: false });
  return about !== undefined && Date.now() - about.mtimeMs > OLD;
}
