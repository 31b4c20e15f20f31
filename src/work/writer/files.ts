import { dirname, resolve } from 'node:path';
import { fault } from '../../units/faults.js';
import { diskReason } from '../disk-reason.js';
import { createFile, knowsNoLinks, removeAll, syncFolder, tryTo } from './basics.js';
import { beside, randomDigits } from './beside.js';
import { codeOf, disk } from './disk.js';
import { settleAll } from './settle.js';
import { withLock } from './with-lock.js';

/**
 * Replaces a file in one step: under its name stands the old content or the whole new one, through a power cut too.
 *
 * @param option the option that named the file, for the message
 * @throws InputError the disk refuses; another run holds the file for too long
 */
export async function replaceFile(
  option: string,
  path: string,
  content: Uint8Array | string,
  cwd: string,
): Promise<void> {
  const full = resolve(cwd, path);
  try {
    settleAll(dirname(full));
    await withLock(full, () => putFile(full, content));
  } catch (error) {
    throw fault(option, path, diskReason(error));
  }
}

/**
 * Writes a file that is not there yet, whole or not at all; one that is there is never touched.
 * @throws InputError there is such a file, or the disk refuses
 */
export async function writeNewFile(path: string, content: string, cwd: string): Promise<void> {
  const full = resolve(cwd, path);
  try {
    settleAll(dirname(full));
    await withLock(full, () => addFile(full, content));
  } catch (error) {
    throw fault(path, '', diskReason(error));
  }
}

/** The same as `replaceFile` for who holds the file's lock. */
export function putFile(path: string, content: string | Uint8Array): void {
  const draft = beside(path, 'new', randomDigits());
  try {
    createFile(draft, content);
    disk.rename(draft, path);
  } catch (error) {
    tryTo(() => removeAll(draft));
    throw error;
  }
  tryTo(() => syncFolder(dirname(path)));
}

function addFile(path: string, content: string): void {
  const draft = beside(path, 'new', randomDigits());
  try {
    createFile(draft, content);
    disk.link(draft, path);
  } catch (error) {
    if (knowsNoLinks(error)) createFile(path, content);
    else throw codeOf(error) === 'EEXIST' ? fault('', '', 'is already there, and is not overwritten') : error;
  } finally {
    tryTo(() => removeAll(draft));
  }
  tryTo(() => syncFolder(dirname(path)));
}
