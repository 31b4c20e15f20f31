import { rename, rm, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fault } from '../units/faults.js';
import { diskReason } from './disk-reason.js';

/**
 * Writes a picture in one step: whoever reads sees the old file or the new one.
 * @throws InputError the disk refuses
 */
export async function writePictureFile(path: string, bytes: Uint8Array, cwd: string): Promise<void> {
  const full = resolve(cwd, path);
  const draft = `${full}.${process.pid}.new`;
  try {
    await writeFile(draft, bytes);
    await rename(draft, full);
  } catch (error) {
    await rm(draft, { force: true });
    throw fault('--picture', path, diskReason(error));
  }
}
