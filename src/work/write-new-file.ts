import { open, rm } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fault } from '../units/faults.js';
import { diskReason } from './disk-reason.js';

/**
 * Writes a text to a file that does not exist yet; an existing one is never touched.
 * @throws InputError there is such a file, or the disk refuses
 */
export async function writeNewFile(path: string, text: string, cwd: string): Promise<void> {
  const full = resolve(cwd, path);
  const handle = await open(full, 'wx').catch((error: unknown) => {
    const isThere = error instanceof Error && 'code' in error && error.code === 'EEXIST';
    throw fault(path, '', isThere ? 'is already there, and is not overwritten' : diskReason(error));
  });
  try {
    await handle.writeFile(text);
    await handle.sync();
  } catch (error) {
    await rm(full, { force: true });
    throw fault(path, '', diskReason(error));
  } finally {
    await handle.close();
  }
}
