import { dirname, join } from 'node:path';
import { createFile, makeFolders, removeAll, tryTo } from './basics.js';
import { randomDigits } from './beside.js';
import { codeOf, disk } from './disk.js';

/** A file, by its name in a folder. */
export interface NamedContent {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * Adds a folder to a store that several runs share without a lock: it appears whole or not at all.
 * @returns false where there is a folder of that name already, which stays
 */
export function addFolder(path: string, files: readonly NamedContent[]): boolean {
  makeFolders(dirname(path));
  const draft = temporaryBeside(path);
  try {
    disk.mkdir(draft);
    for (const { name, content } of files) createFile(join(draft, name), content);
    disk.rename(draft, path);
    return true;
  } catch (error) {
    tryTo(() => removeAll(draft));
    if (['ENOTEMPTY', 'EEXIST'].includes(codeOf(error)) && disk.about(path) !== undefined) return false;
    throw error;
  }
}

/** Takes a folder out of a store in one step, so that nobody reads half of it. */
export function discardFolder(path: string): void {
  const draft = temporaryBeside(path);
  tryTo(() => {
    disk.rename(path, draft);
    removeAll(draft);
  });
}

/** What is killed in between can be told by its name. */
function temporaryBeside(path: string): string {
  return join(dirname(path), `.new-${disk.self().pid}-${randomDigits()}`);
}
