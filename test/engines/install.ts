import { execFileSync, spawnSync } from 'node:child_process';

/** Programs that the engines consist of, and the Debian packages that bring them. */
const WANTED: Readonly<Record<string, string>> = {
  munged: 'munge',
  slurmctld: 'slurm-wlm',
  slurmd: 'slurm-wlm',
  sbatch: 'slurm-wlm',
  parallel: 'parallel',
};

/** Installs what is not there; runs before the tests. */
export function setup(): void {
  const packages = Object.keys(WANTED).flatMap((name) => (isThere(name) ? [] : [WANTED[name]!]));
  if (packages.length === 0) return;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  execFileSync('apt-get', ['update', '-qq'], { stdio: 'inherit', env });
  const install = ['install', '-y', '-qq', '--no-install-recommends', ...new Set(packages)];
  execFileSync('apt-get', install, { stdio: 'inherit', env });
}

function isThere(name: string): boolean {
  return spawnSync('sh', ['-c', `command -v ${name} || [ -x /usr/sbin/${name} ]`]).status === 0;
}
