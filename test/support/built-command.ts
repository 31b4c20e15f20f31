import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '../..');

/** The command as it is shipped, worker threads included, bundled for these tests alone. */
export interface BuiltCommand {
  readonly file: string;
  readonly remove: () => void;
}

/** Bundles the command below node_modules, where its packages are found. */
export function builtCommand(): BuiltCommand {
  const folder = join('node_modules', `.command-${process.pid}-${Math.random().toString(36).slice(2)}`);
  execFileSync(process.execPath, ['scripts/bundle-command.mjs', folder], { cwd: ROOT });
  return {
    file: join(ROOT, folder, 'leadwright.js'),
    remove: () => rmSync(join(ROOT, folder), { recursive: true, force: true }),
  };
}
