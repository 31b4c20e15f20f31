import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { accounts, filesBelow, manifestIn } from './fleet-folder.js';

/** Runs a fleet file of a folder with the shipped command, and ends it by SIGKILL after some milliseconds. */
export async function runKilled(command: string, cwd: string, after: number): Promise<void> {
  const child = spawn(
    process.execPath,
    [command, 'fleet', 'fleet.yaml', '--out', 'out', '--jobs', '2', '--formats', 'stl'],
    {
      cwd,
      stdio: 'ignore',
    },
  );
  const ended = new Promise((resolve) => child.once('exit', resolve));
  const timer = setTimeout(() => child.kill('SIGKILL'), after);
  await ended;
  clearTimeout(timer);
}

/** Runs it to its end. */
export function runWhole(command: string, cwd: string, more: readonly string[] = []) {
  const args = [command, 'fleet', 'fleet.yaml', '--out', 'out', '--jobs', '2', '--formats', 'stl', '--json', ...more];
  const { stdout, status, stderr } = spawnSync(process.execPath, args, { cwd, encoding: 'utf8', maxBuffer: 1e9 });
  if (status !== 0) throw new Error(`ended with ${status}: ${stderr}${stdout.slice(0, 500)}`);
  const { run }: { run: { made: number; reused: number } } = JSON.parse(stdout);
  return run;
}

/** What is wrong with a folder after a kill: a file that is not as in the whole one, or a manifest that does not agree. */
export function halves(cwd: string, whole: Readonly<Record<string, string>>): string[] {
  const out = join(cwd, 'out');
  const visible = Object.entries(filesBelow(out)).filter(([file]) => !/(?:^|\/)\./.test(file));
  const wrong = visible.filter(([file, digest]) => whole[file] !== digest).map(([file]) => file);
  if (!manifestIn(out)) return wrong;
  const { there, told } = accounts(out);
  return [...wrong, ...Object.keys(told).filter((file) => there[file] !== told[file])];
}

/** How many whole parts lie in the cache; it may be at work. */
export function cached(cwd: string): number {
  const cache = join(cwd, '.leadwright-cache');
  const groups = existsSync(cache) ? readdirSync(cache) : [];
  const entries = groups.flatMap((group) => readdirSync(join(cache, group)));
  return entries.filter((name) => /^[0-9a-f]{64}$/.test(name)).length;
}
