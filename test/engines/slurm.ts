import { execFileSync, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';

/** A controller and a node on this computer, with a configuration of their own. */
export interface Slurm {
  /** runs one of its commands */
  readonly call: (command: string, args: readonly string[], cwd: string, env?: Record<string, string>) => string;
  readonly stop: () => Promise<void>;
}

/** Starts both, and waits until the node takes jobs. */
export async function startSlurm(): Promise<Slurm> {
  const dir = mkdtempSync(join(tmpdir(), 'slurm-'));
  for (const name of ['state', 'spool']) mkdirSync(join(dir, name));
  execFileSync('dd', ['if=/dev/urandom', `of=${join(dir, 'munge.key')}`, 'bs=1024', 'count=1'], { stdio: 'ignore' });
  execFileSync('chmod', ['400', join(dir, 'munge.key')]);
  const conf = join(dir, 'slurm.conf');
  writeFileSync(conf, configuration(dir));
  const env = { ...process.env, SLURM_CONF: conf };
  const started = [
    spawn('munged', ['--foreground', '--force', ...mungeFiles(dir)], { stdio: 'ignore' }),
    spawn('slurmctld', ['-D', '-i'], { stdio: 'ignore', env }),
    spawn('slurmd', ['-D'], { stdio: 'ignore', env }),
  ];
  const call: Slurm['call'] = (command, args, cwd, more = {}) =>
    execFileSync(command, args, { cwd, env: { ...env, ...more }, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  const stop = async () => {
    const ended = started.map((child) => new Promise((resolve) => child.once('exit', resolve)));
    for (const child of started) child.kill('SIGTERM');
    await Promise.race([Promise.all(ended), new Promise((resolve) => setTimeout(resolve, 10_000))]);
    for (const child of started) child.kill('SIGKILL');
    rmSync(dir, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    await until(() => call('sinfo', ['--noheader', '--format=%T'], dir).trim() === 'idle', 60);
  } catch (error) {
    await stop();
    throw error;
  }
  return { call, stop };
}

/** Waits until something is so; errors on the way count as no. */
export async function until(isSo: () => boolean, seconds: number): Promise<void> {
  for (const end = Date.now() + seconds * 1000; Date.now() < end; ) {
    try {
      if (isSo()) return;
    } catch {
      // not up yet
    }
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
  throw new Error(`not so within ${seconds} s`);
}

function mungeFiles(dir: string): string[] {
  return [
    `--key-file=${join(dir, 'munge.key')}`,
    `--socket=${join(dir, 'munge.socket')}`,
    `--pid-file=${join(dir, 'munge.pid')}`,
    `--log-file=${join(dir, 'munge.log')}`,
    `--seed-file=${join(dir, 'munge.seed')}`,
  ];
}

function configuration(dir: string): string {
  const host = hostname();
  const lines = {
    ClusterName: 'fleet',
    SlurmctldHost: `${host}(127.0.0.1)`,
    AuthInfo: `socket=${join(dir, 'munge.socket')}`,
    SlurmUser: 'root',
    StateSaveLocation: join(dir, 'state'),
    SlurmdSpoolDir: join(dir, 'spool'),
    SlurmctldPidFile: join(dir, 'ctld.pid'),
    SlurmdPidFile: join(dir, 'd.pid'),
    SlurmctldLogFile: join(dir, 'ctld.log'),
    SlurmdLogFile: join(dir, 'd.log'),
    SlurmctldPort: '16817',
    SlurmdPort: '16818',
    ProctrackType: 'proctrack/linuxproc',
    TaskPlugin: 'task/none',
    SelectType: 'select/cons_tres',
    SelectTypeParameters: 'CR_Core',
    MpiDefault: 'none',
    ReturnToService: '2',
    KillWait: '2',
    SchedulerParameters: 'sched_interval=2,batch_sched_delay=0',
    NodeName: `${host} NodeAddr=127.0.0.1 CPUs=2 State=UNKNOWN`,
    PartitionName: 'all Nodes=ALL Default=YES MaxTime=INFINITE State=UP',
  };
  return `${Object.entries(lines)
    .map(([key, value]) => `${key}=${value}`)
    .join('\n')}\n`;
}
