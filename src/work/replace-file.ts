import { rename, rm, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fault } from '../units/faults.js';
import { diskReason } from './disk-reason.js';

/**
 * Writes a file in one step: whoever reads sees the old file or the new one.
 * @param option the option that named the file, for the message
 * @throws InputError the disk refuses
 */
export async function replaceFile(
  option: string,
  path: string,
  content: Uint8Array | string,
  cwd: string,
): Promise<void> {
  const full = resolve(cwd, path);
  const draft = `${full}.${process.pid}.new`;
  try {
    await writeFile(draft, content);
    await rename(draft, full);
  } catch (error) {
    await rm(draft, { force: true });
    throw fault(option, path, diskReason(error));
  }
}
