import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { WORKER } from './start-maker.js';

/**
 * SHA-256 of the program as it is built: its scripts by their names, beside the worker's. From the sources, where nothing
 * is built, it is a word.
 *
 * @param worker the bundled worker
 */
export function engineDigest(worker: URL = WORKER): string {
  if (!existsSync(worker)) return 'sources';
  const folder = dirname(fileURLToPath(worker));
  const scripts = readdirSync(folder).filter((name) => /\.c?js$/.test(name));
  const hash = createHash('sha256');
  for (const name of scripts.sort())
    hash
      .update(`${name}\n`)
      .update(readFileSync(join(folder, name)))
      .update('\n');
  return hash.digest('hex');
}
