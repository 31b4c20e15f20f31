import { type Lock, lock } from './lock.js';
import { settle } from './settle.js';

/**
 * Does what changes a file or a folder while no other run may change it; what an ended run left beside it is put right
 * first.
 *
 * @throws InputError another run holds it for too long; the disk refuses
 */
export async function withLock<T>(path: string, work: (lock: Lock) => T | Promise<T>): Promise<T> {
  const held = await lock(path);
  try {
    settle(path);
    return await work(held);
  } finally {
    held.release();
  }
}
